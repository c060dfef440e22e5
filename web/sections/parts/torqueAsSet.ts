import type { MotorSurface } from "../../../sim/index.ts";
import type { TorqueCurveInput } from "../../charts/torqueCurve.ts";

/** What the motor gives, and what the controller lets through of it: its torque, power and current limits at the pack's nominal voltage. */
export function torqueAsSet({ envelope, limits }: MotorSurface): Pick<TorqueCurveInput, "motor" | "asSet"> {
  const motor = envelope.filter(({ torque_Nm }) => torque_Nm >= 0);
  const held = limits.filter(({ name }) => name.startsWith("controller"));
  const asSet = motor.map(({ speed_rpm, torque_Nm }) => {
    const allowed_Nm = held.flatMap(({ points }) =>
      // Limits stand on the grid of the envelope, where they hold anything back at all.
      points.filter((point) => Math.abs(point.speed_rpm - speed_rpm) < 1e-6).map((point) => point.torque_Nm),
    );
    return { speed_rpm, torque_Nm: Math.min(torque_Nm, ...allowed_Nm) };
  });
  return { motor, asSet };
}

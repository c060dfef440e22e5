import type { Job } from "../../../shared/job/job.ts";
import { engineCurve } from "../../../sim/index.ts";

/** The engine that came out, with its torque over its speed. */
export interface RatedEngine {
  readonly ratedTorque_Nm: number;
  readonly torque_rpm: number;
  readonly ratedPower_kW: number;
  readonly power_rpm: number;
  readonly curve: readonly { readonly speed_rpm: number; readonly torque_Nm: number }[];
}

/** The old engine where its four ratings are known; a curve cannot be drawn from fewer. */
export function ratedEngine(engine: Job["engine"]): RatedEngine | undefined {
  const { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm, idle_rpm, limit_rpm } = engine ?? {};
  if (
    ratedTorque_Nm === undefined ||
    torque_rpm === undefined ||
    ratedPower_kW === undefined ||
    power_rpm === undefined
  )
    return undefined;
  const drawn = engineCurve({ ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm, idle_rpm, limit_rpm });
  const curve = Array.from(drawn.speed_rpm, (speed_rpm, i) => ({ speed_rpm, torque_Nm: drawn.torque_Nm[i] }));
  return { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm, curve };
}

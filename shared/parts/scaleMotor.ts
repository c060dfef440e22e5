import { numbersIn } from "../job/path.ts";
import type { Motor, MotorLoss } from "../job/schema/motor.ts";
import type { Part } from "./part.ts";

/** A generic motor is drawn larger or smaller by at most this factor of power. */
export const MOST_SCALED_ratio = 3;

/**
 * A motor of the same shape, speed and voltage with `size_ratio` times the torque and power.
 *
 *   loss'(T, w) = k^(3/4) · loss(T / k, w)
 *
 * Of machines of one shape at one speed, power goes with the fourth power of length, mass and loss with the third, rotor inertia
 * with the fifth (textbook rule of growth, from memory); so cooling carries off what the scaled motor loses, and the share lost goes with
 * k^(-1/4), as the printed efficiency classes do [IEC60034-30-1, 4-pole motors at 50 Hz]. Throws a RangeError beyond a third or three times.
 */
export function scaleMotor(motor: Motor, size_ratio: number): Motor {
  if (!(size_ratio >= 1 / MOST_SCALED_ratio && size_ratio <= MOST_SCALED_ratio)) {
    throw new RangeError(`found ${size_ratio} times the size, a third to ${MOST_SCALED_ratio} times allowed`);
  }
  const { envelope, heat } = motor;
  const grown_ratio = size_ratio ** 0.75; // of mass and loss
  return {
    ...motor,
    mass_kg: grown_ratio * motor.mass_kg,
    rotorInertia_kgm2: size_ratio ** 1.25 * motor.rotorInertia_kgm2,
    envelope:
      envelope.kind === "peak"
        ? { ...envelope, torque_Nm: size_ratio * envelope.torque_Nm, power_kW: size_ratio * envelope.power_kW }
        : { ...envelope, torque_Nm: envelope.torque_Nm.map((torque_Nm) => size_ratio * torque_Nm) },
    loss: scaleLoss(motor.loss, size_ratio),
    ...(heat && {
      heat: { ...heat, capacity_kJpK: grown_ratio * heat.capacity_kJpK, cooling_WpK: grown_ratio * heat.cooling_WpK },
    }),
  };
}

function scaleLoss(loss: MotorLoss, size_ratio: number): MotorLoss {
  const grown_ratio = size_ratio ** 0.75;
  const efficiency_frac = (value: number) => 1 / (1 + (1 / value - 1) * size_ratio ** -0.25);
  switch (loss.kind) {
    case "fourTerm":
      return {
        kind: "fourTerm",
        copper_coeff: (grown_ratio / size_ratio ** 2) * loss.copper_coeff,
        iron_coeff: grown_ratio * loss.iron_coeff,
        windage_coeff: grown_ratio * loss.windage_coeff,
        constant_W: grown_ratio * loss.constant_W,
      };
    case "lossTable":
      return {
        ...loss,
        torque_Nm: loss.torque_Nm.map((torque_Nm) => size_ratio * torque_Nm),
        loss_W: loss.loss_W.map((row) => row.map((loss_W) => grown_ratio * loss_W)),
      };
    case "efficiencyMap":
      return {
        ...loss,
        torque_Nm: loss.torque_Nm.map((torque_Nm) => size_ratio * torque_Nm),
        efficiency_frac: loss.efficiency_frac.map((row) =>
          row.map((value) => (value > 0 ? efficiency_frac(value) : value)),
        ),
      };
    case "flat":
      return { kind: "flat", efficiency_frac: efficiency_frac(loss.efficiency_frac) };
  }
}

/** A generic motor in another size, its figures to three digits and the bands of its origins in proportion. */
export function scaleMotorPart(part: Part<Motor>, id: string, title: string, size_ratio: number): Part<Motor> {
  const origin = `${part.data.name}, scaled: power with the fourth power of length, loss and mass with the third`;
  const data = roundNumbers({ ...scaleMotor(part.data, size_ratio), name: title, origin });
  const before = new Map(numbersIn(part.data).map(({ path, value }) => [path, value]));
  const grown = new Map(numbersIn(data).map(({ path, value }) => [path, value / (before.get(path) ?? value)]));
  const origins = Object.entries(part.origins).map(([path, each]) => {
    const ratio = grown.get(path) ?? 1;
    const { low, high } = each;
    return [path, low === undefined || high === undefined ? each : { ...each, low: ratio * low, high: ratio * high }];
  });
  return { id, title, data, origins: Object.fromEntries(origins) };
}

function roundNumbers<Value>(value: Value): Value {
  return JSON.parse(
    JSON.stringify(value, (_, inner) => (typeof inner === "number" ? Number(inner.toPrecision(3)) : inner)),
  );
}

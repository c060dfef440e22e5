import { greatestWhere } from "../../math/halving.ts";
import type { Limit } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import type { Gear } from "../../vehicle/gear.ts";
import { type StandingCar, steadyOnSlope, WALL } from "./steadyOnSlope.ts";

/** What a car needs at the motor shaft to begin to roll, what it has there, and what bounds that. */
export interface StartTorque {
  readonly gear: string;
  readonly needed_Nm: number;
  readonly available_Nm: number;
  readonly limit: Limit;
}

/** The speed that counts as rolling, reached within a second: speeding up then asks for nothing. */
const CREEP_mps = 1e-6;

/**
 * Torque at the motor shaft that a car needs in one gear to begin to roll on a slope, and what it has for that, in Nm:
 *
 *   needed = (m g sin θ + rolling + wheel-side drag) r / (G η) + drag torque        [GTR15, Annex 7, para 5], at no speed
 *
 * What it has is the most torque within every limit of the step: grip, driveline, motor, controller, pack, heat. Not below zero.
 */
export function startTorque(model: Model, gear: Gear, sinSlope: number, car: StandingCar = {}): StartTorque {
  const asked = launch(model, gear, sinSlope, 0, car);
  const perNewton_Nm = 1 / (gear.motor_radpm * gear.efficiency_frac);
  const within = (torque_Nm: number) =>
    launch(model, gear, sinSlope, (torque_Nm - asked.motor_Nm) / perNewton_Nm, car).over_Nm <= 0;
  const available_Nm = greatestWhere(0, model.motor.envelope.peakTorque_Nm, within);
  const beyond = launch(model, gear, sinSlope, (1.0001 * available_Nm + 1e-6 - asked.motor_Nm) / perNewton_Nm, car);
  return { gear: gear.name, needed_Nm: asked.motor_Nm, available_Nm, limit: beyond.limit };
}

/** Sine of the steepest slope on which a car begins to roll in one gear; 0 where it does not even on the level. */
export function steepestStart(model: Model, gear: Gear, car: StandingCar = {}): number {
  return greatestWhere(0, WALL, (sinSlope) => launch(model, gear, sinSlope, 0, car).over_Nm <= 0);
}

/** The car beginning to roll with a load more at its tyres: torque at the motor, and by how much it breaks a limit. */
function launch(model: Model, gear: Gear, sinSlope: number, load_N: number, car: StandingCar) {
  return steadyOnSlope(model, gear, sinSlope, [0, CREEP_mps], load_N, car);
}

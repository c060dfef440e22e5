import { LIMITS, type Limit } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { type EngineCar, engineForce_N, resistance_N } from "./engineStart.ts";
import type { MotorStart } from "./standingStart.ts";

/** The highest speed on the level, and what ends it: the speed that the motor or engine turns, or what it gives. */
export interface TopSpeed {
  readonly speed_mps: number;
  readonly gear: string;
  readonly because: "rotation" | "pull";
  /** What of the electric car binds; absent for an engine. */
  readonly limit?: Limit;
}

/** This near the end of its revolutions a motor counts as there. */
const NEAR_frac = 0.995;
const FINE_mps = 0.01;

/** The highest speed that a start at full throttle comes to, and what held the car back there. */
export function motorTopSpeed(model: Model, { speed_mps, gear, limit }: MotorStart): TopSpeed {
  const at = speed_mps.indexOf(Math.max(...speed_mps));
  const { name, top_mps, motor_radpm } = model.gears[gear[at]];
  const bound = LIMITS[limit[at]];
  // Where the motor's torque fades out before the end of its revolutions, it is that which ends the speed.
  const fades_mps = top_mps - model.motor.rollBack_radps / motor_radpm;
  const turns = speed_mps[at] >= NEAR_frac * top_mps || (bound === "motor" && speed_mps[at] >= fades_mps);
  return { speed_mps: speed_mps[at], gear: name, because: turns ? "rotation" : "pull", limit: bound };
}

/** The highest speed at which the engine's pull in one of the gears still covers what resists. */
export function engineTopSpeed(car: EngineCar): TopSpeed {
  let best: TopSpeed = { speed_mps: 0, gear: car.gears[0].name, because: "pull" };
  for (const gear of car.gears) {
    const turned_mps = car.speed_radps[car.speed_radps.length - 1] / gear.motor_radpm;
    // From the top down: below the speed found it may pull less than it resists, as where a tall gear labours.
    const pulls = (speed_mps: number) =>
      (engineForce_N(car, gear, Math.min(speed_mps, turned_mps)) ?? 0) >= resistance_N(car, speed_mps);
    let speed_mps = turned_mps;
    while (speed_mps > 0 && !pulls(speed_mps)) speed_mps -= FINE_mps;
    if (speed_mps > best.speed_mps)
      best = { speed_mps, gear: gear.name, because: speed_mps === turned_mps ? "rotation" : "pull" };
  }
  return best;
}

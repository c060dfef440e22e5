import { balance } from "../../step/balance.ts";
import { beginInterval } from "../../step/beginInterval.ts";
import { LIMITS, type Limit } from "../../step/limits.ts";
import { type Model, modelWith } from "../../step/model.ts";
import { beginRoad, createRunContext } from "../../step/runContext.ts";
import type { Gear } from "../../vehicle/gear.ts";
import { roadWith } from "../../vehicle/roadLoad.ts";

/** How the car stands; charged to its ceiling and as warm as the day where nothing else is given. */
export interface StandingCar {
  readonly soc_frac?: number;
  readonly motor_K?: number;
  readonly pack_K?: number;
}

/** What a second on a slope asks of the motor. */
export interface SteadySecond {
  readonly motor_Nm: number;
  /** By how much that breaks the worst limit, as a torque at the motor shaft; not above zero where the car can do it. */
  readonly over_Nm: number;
  readonly limit: Limit;
}

const ENDLESS_m = 1e9;
/** Sine of a slope steeper than any road. */
export const WALL = 0.9;

/** The car on an even slope in one gear for a second, from one speed to another, with `load_N` more at its tyres: torque, and the limits. */
export function steadyOnSlope(
  model: Model,
  gear: Gear,
  sinSlope: number,
  [from_mps, to_mps]: readonly [number, number],
  load_N: number,
  car: StandingCar = {},
): SteadySecond {
  const { road } = model;
  const context = createRunContext(
    modelWith(model, {
      gears: [gear],
      gearUp_mps: new Float64Array(0),
      road: roadWith(road, { wheelDrag_N: road.wheelDrag_N + load_N }),
    }),
    car.soc_frac ?? model.pack.ceiling_frac,
  );
  const { state, interval } = context;
  state.motor_K = car.motor_K ?? state.motor_K;
  state.pack.temperature_K = car.pack_K ?? state.pack.temperature_K;
  const slope = { distance_m: Float64Array.of(0, ENDLESS_m), elevation_m: Float64Array.of(0, sinSlope * ENDLESS_m) };
  beginRoad(context, slope, from_mps);
  beginInterval(context, from_mps, 1);
  const over_Nm = balance(context, to_mps, 1);
  return { motor_Nm: interval.motor_Nm, over_Nm, limit: LIMITS[interval.limit] };
}

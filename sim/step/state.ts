import type { PackState } from "../battery/packModel.ts";
import { cabinAtStart_K } from "../vehicle/cabin.ts";
import { createGearState, type GearState, resetGearState } from "./chooseGear.ts";
import type { Model } from "./model.ts";

/** What a car carries from one interval to the next. */
export interface State {
  speed_mps: number;
  distance_m: number;
  elevation_m: number;
  motor_K: number;
  /** The air's where there is no cabin to be kept warm. */
  cabin_K: number;
  /** Since the cabin was last cold. */
  trip_m: number;
  readonly pack: PackState;
  readonly gear: GearState;
  /** The leg of the height profile the car is on. */
  leg: number;
}

/** A car at rest, charged to `soc_frac`, as warm as the day and its pack are. */
export function createState(model: Model, soc_frac: number): State {
  return {
    speed_mps: 0,
    distance_m: 0,
    elevation_m: 0,
    motor_K: model.ambient_K,
    cabin_K: atStart_K(model),
    trip_m: 0,
    pack: { soc_frac, temperature_K: model.packStart_K, dischargeUse_A2s: 0, chargeUse_A2s: 0 },
    gear: createGearState(),
    leg: 0,
  };
}

/** Makes of a state what `createState` makes, in the same memory. */
export function resetState(state: State, model: Model, soc_frac: number): void {
  const { pack, gear } = state;
  state.speed_mps = 0;
  state.distance_m = 0;
  state.elevation_m = 0;
  state.motor_K = model.ambient_K;
  state.cabin_K = atStart_K(model);
  state.trip_m = 0;
  pack.soc_frac = soc_frac;
  pack.temperature_K = model.packStart_K;
  pack.dischargeUse_A2s = 0;
  pack.chargeUse_A2s = 0;
  resetGearState(gear);
  state.leg = 0;
}

function atStart_K({ cabin, ambient_K }: Model): number {
  return cabin === undefined ? ambient_K : cabinAtStart_K(cabin, ambient_K);
}

import { advancePack } from "../battery/advancePack.ts";
import { warmed_K } from "../math/heatLump.ts";
import type { Cabin } from "../vehicle/cabin.ts";
import { advanceGear } from "./chooseGear.ts";
import { type RunContext, servedHeater_W } from "./runContext.ts";

/** Moves the state on by the part of the interval that was driven. */
export function integrate(context: RunContext): void {
  const { model, start, state, interval, scratch } = context;
  const { ambient_K } = model;
  const { driven_s, driven_frac, end_mps, current_A, resistance_ohm } = interval;
  state.distance_m += interval.driven_m;
  state.speed_mps = driven_frac < 1 ? state.speed_mps + driven_frac * (end_mps - state.speed_mps) : end_mps;
  state.motor_K = warmed_K(model.motor.heat, scratch.motorHeat, state.motor_K, interval.loss_W, ambient_K, driven_s);
  advanceGear(state.gear, start.gear, driven_s);
  advancePack(model.pack, state.pack, scratch.packHeat, current_A, resistance_ohm, ambient_K, driven_s);
  if (model.cabin !== undefined) warmCabin(context, model.cabin);
}

/** A cabin warms by what its heater was given; after a trip's length it has stood until it was cold. */
function warmCabin({ model, start, state, interval, scratch }: RunContext, cabin: Cabin): void {
  const { ambient_K } = model;
  const { driven_s, driven_m } = interval;
  const heater_W = servedHeater_W(start);
  state.cabin_K = warmed_K(cabin.lump, scratch.cabinHeat, state.cabin_K, heater_W, ambient_K, driven_s);
  state.trip_m += driven_m;
  if (state.trip_m < cabin.trip_m) return;
  state.trip_m = 0;
  state.cabin_K = ambient_K;
}

import { advancePack } from "../battery/advancePack.ts";
import { warmed_K } from "../math/heatLump.ts";
import { advanceGear } from "./chooseGear.ts";
import type { RunContext } from "./runContext.ts";

/** Moves the state on by the part of the interval that was driven. */
export function integrate({ model, start, state, interval, scratch }: RunContext): void {
  const { ambient_K } = model;
  const { driven_s, driven_frac, end_mps, current_A, resistance_ohm } = interval;
  state.distance_m += interval.driven_m;
  state.speed_mps = driven_frac < 1 ? state.speed_mps + driven_frac * (end_mps - state.speed_mps) : end_mps;
  state.motor_K = warmed_K(model.motor.heat, scratch.motorHeat, state.motor_K, interval.loss_W, ambient_K, driven_s);
  advanceGear(state.gear, start.gear, driven_s);
  advancePack(model.pack, state.pack, scratch.packHeat, current_A, resistance_ohm, ambient_K, driven_s);
}

import { advancePack } from "../battery/advancePack.ts";
import { warmed_K } from "../math/heatLump.ts";
import { advanceGear } from "./chooseGear.ts";
import type { RunContext } from "./runContext.ts";

/**
 * Moves the state on by the part of the interval that was driven, `part_frac` of it; `resistance_ohm` is what the pack's current met.
 */
export function integrate(
  context: RunContext,
  driven_s: number,
  part_frac: number,
  distance_m: number,
  resistance_ohm: number,
): void {
  const { model, state, interval, scratch } = context;
  const { ambient_K } = model;
  state.distance_m += distance_m;
  state.speed_mps =
    part_frac < 1 ? state.speed_mps + part_frac * (interval.end_mps - state.speed_mps) : interval.end_mps;
  state.motor_K = warmed_K(model.motor.heat, scratch.motorHeat, state.motor_K, interval.loss_W, ambient_K, driven_s);
  advanceGear(state.gear, context.start.gear, driven_s);
  advancePack(model.pack, state.pack, scratch.packHeat, interval.current_A, resistance_ohm, ambient_K, driven_s);
}

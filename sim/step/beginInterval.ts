import { setPackLimits } from "../battery/packLimits.ts";
import { derating_frac, left_frac } from "../math/heatLump.ts";
import { heaterPower_W } from "../vehicle/cabin.ts";
import { chooseGear } from "./chooseGear.ts";
import type { RunContext } from "./runContext.ts";

/**
 * Sets what holds for a whole interval from the state at its start: what the pack gives and takes at most, the accessories it can
 * feed (a heater with a thermostat among them), how far heat holds the motor back, the gear (by the mean of the speed now and `gearBy_mps`).
 */
export function beginInterval(context: RunContext, gearBy_mps: number, dt_s: number): void {
  const { model, state, start } = context;
  setPackLimits(start.pack, model.pack, state.pack, dt_s);
  start.dt_s = dt_s;
  const { cabin } = model;
  start.heater_W =
    cabin === undefined
      ? 0
      : heaterPower_W(cabin, state.cabin_K, model.ambient_K, left_frac(context.scratch.cabinHeat, cabin.lump, dt_s));
  start.wanted_W = model.accessories_W + start.heater_W;
  start.accessories_W = Math.min(start.wanted_W, start.pack.discharge_W);
  start.motorDerate_frac = derating_frac(model.motor.heat, state.motor_K);
  const mean_mps = 0.5 * (state.speed_mps + gearBy_mps);
  start.gear = model.gears.length > 1 ? chooseGear(model.gears, model.gearUp_mps, state.gear, mean_mps) : 0;
}

import { meetsFloor, timeToFloor_s } from "../battery/advancePack.ts";
import { account, accountPeaks } from "./account.ts";
import { integrate } from "./integrate.ts";
import type { RunContext } from "./runContext.ts";
import type { Totals } from "./totals.ts";

/**
 * Adds `dt_s` of the interval worked out in `context` to the totals and moves the state on. Where the state of charge would pass the
 * floor, the interval is cut in proportion and the totals say so. Returns the seconds driven.
 */
export function finishInterval(context: RunContext, totals: Totals, dt_s: number): number {
  const { model, state, start, interval } = context;
  const { current_A } = interval;
  const { pack } = model;
  const resistance_ohm = current_A >= 0 ? start.pack.discharge_ohm : start.pack.charge_ohm;
  const isCut = meetsFloor(pack, state.pack, current_A, dt_s);
  const part_frac = isCut ? Math.min(1, timeToFloor_s(pack, state.pack, current_A) / dt_s) : 1;
  const driven_s = part_frac * dt_s;
  const distance_m = part_frac * interval.distance_m;
  account(context, totals, driven_s, distance_m, resistance_ohm);
  integrate(context, driven_s, part_frac, distance_m, resistance_ohm);
  if (isCut) {
    state.pack.soc_frac = pack.floor_frac;
    totals.reachedFloor = true;
  }
  accountPeaks(context, totals);
  return driven_s;
}

import { meetsFloor, timeToFloor_s } from "../battery/advancePack.ts";
import { account } from "./account.ts";
import { integrate } from "./integrate.ts";
import type { RunContext } from "./runContext.ts";
import type { Totals } from "./totals.ts";

/**
 * Adds `dt_s` of the interval worked out in `context` to the totals and moves the state on. Where the state of charge would pass the
 * floor, the interval is cut in proportion and the totals say so. How much of it was driven stands in the interval.
 */
export function finishInterval(context: RunContext, totals: Totals, dt_s: number): void {
  const { model, state, interval } = context;
  const { pack } = model;
  const isCut = meetsFloor(pack, state.pack, interval.current_A, dt_s);
  const driven_frac = isCut ? timeToFloor_s(pack, state.pack, interval.current_A) / dt_s : 1;
  interval.driven_frac = driven_frac;
  interval.driven_s = driven_frac * dt_s;
  interval.driven_m = driven_frac * interval.distance_m;
  integrate(context);
  if (isCut) {
    state.pack.soc_frac = pack.floor_frac;
    totals.reachedFloor = true;
  }
  account(context, totals);
}

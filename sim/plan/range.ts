import type { Model } from "../step/model.ts";
import { pass } from "../step/run.ts";
import { createWork } from "../step/state.ts";
import { checkLedger, createTotals } from "../step/totals.ts";
import type { Trace } from "../trace/trace.ts";
import { endsElsewhere, returnTrip } from "./returnTrip.ts";

/** Driving on ends after a day at the latest. */
const LONGEST_s = 24 * 3600;

interface Range {
  readonly distance_m: number;
  /** At the floor, where a whole repetition covered less than half of its road, or after 24 h ("at least"). */
  readonly end: "floor" | "stuck" | "time";
}

/**
 * How far a car goes on one charge, in metres: the road driven over and over from the ceiling, charge and temperatures going on,
 * until the floor. Not a division of energies: what the pack can still give late in the day, and what sags, is in it.
 * A road that ends more than 20 m above or below its start is driven there and back.
 */
export function rangeOn(model: Model, trace: Trace): Range {
  const legs = endsElsewhere(trace) ? [trace, returnTrip(trace)] : [trace];
  const work = createWork(model, model.pack.ceiling_frac);
  const totals = createTotals(model.pack.ceiling_frac, work.state.motor_K, work.state.pack_K);
  for (let repetition = 0; ; repetition++) {
    const leg = legs[repetition % legs.length];
    const before_m = totals.distance_m;
    const beforeTarget_m = totals.target_m;
    pass(work, totals, leg);
    const covered_m = totals.distance_m - before_m;
    const end = totals.reachedFloor
      ? "floor"
      : covered_m < 0.5 * (totals.target_m - beforeTarget_m) || totals.target_m === 0
        ? "stuck"
        : totals.time_s >= LONGEST_s
          ? "time"
          : undefined;
    if (end !== undefined) {
      checkLedger(totals.ledger);
      return { distance_m: totals.distance_m, end };
    }
  }
}

import type { Channels } from "../../step/channels.ts";
import { homeward, type Model } from "../../step/model.ts";
import { pass, type RunResult } from "../../step/run.ts";
import { createRunContext } from "../../step/runContext.ts";
import { checkLedger, copyTotals, createTotals } from "../../step/totals.ts";
import type { Trace } from "../../trace/trace.ts";
import { thereAndBack } from "./returnTrip.ts";

/** Driving on ends after a day at the latest. */
const LONGEST_s = 24 * 3600;
/** A road whose climb from end to end is at most this share of the energy drawn on one pass closes by itself. */
const CLOSED_frac = 0.005;

export interface Range {
  readonly distance_m: number;
  /**
   * Why driving on ended: empty; a leg on which the car covered less than half of its road; 24 h ("at least"); or a repetition that
   * drew nothing, so that there is no range and `distance_m` is 0.
   */
  readonly end: "floor" | "stuck" | "time" | "endless";
  /** Driven there and back, since one pass ends higher or lower than it begins. */
  readonly isThereAndBack: boolean;
  /** How much higher the first pass ended than it began, negative below. */
  readonly rise_m: number;
}

/** A road driven once from the ceiling, and how far the car then goes on. */
export interface DrivenOn {
  readonly once: RunResult;
  readonly range: Range;
}

/** How far a car goes on one charge: `driveOn` where the first pass by itself is not asked for. */
export function rangeOn(model: Model, trace: Trace): Range {
  return driveOn(model, trace).range;
}

/**
 * How far a car goes on one charge, in metres: the road driven over and over from the ceiling, charge and temperatures going on,
 * until the pack is empty. Not a division of energies: what the pack can still give late in the day, and what sags, is in it.
 *
 * A repetition gives nothing away. Where m g |dz| of one pass is more than 0.5 % of the energy that it drew from the cells, the road is
 * driven there and back (and so is any road with a wind that turns with the car), each leg from where the car stands, and the wind that was against it is with it on the way home.
 *
 * The first pass is what `run` gives, recorded into `channels` where they are given.
 */
export function driveOn(model: Model, trace: Trace, channels?: Channels): DrivenOn {
  const out = createRunContext(model, model.pack.ceiling_frac);
  const { state } = out;
  const { road } = model;
  const totals = createTotals(state);
  pass(out, totals, trace, channels);
  checkLedger(totals.ledger);
  const once = { totals: copyTotals(totals), endSoc_frac: state.pack.soc_frac };

  const { climb_J, total_J } = totals.ledger;
  const isThereAndBack = model.hasWindHome || Math.abs(climb_J) > CLOSED_frac * Math.max(0, total_J);
  const home = isThereAndBack ? homeward(model) : model;
  const ways = isThereAndBack ? thereAndBack(trace) : undefined;
  let isHome = false;
  let place_m = 0;
  let before_m = 0;
  let beforeTarget_m = 0;
  let repetitionSoc_frac = model.pack.ceiling_frac;
  for (;;) {
    const covered_m = totals.distance_m - before_m;
    const asked_m = totals.target_m - beforeTarget_m;
    const isWhole = isHome || !isThereAndBack;
    const drewNothing = isWhole && state.pack.soc_frac >= repetitionSoc_frac;
    const end = totals.reachedFloor
      ? "floor"
      : covered_m < 0.5 * asked_m || asked_m === 0
        ? "stuck"
        : drewNothing
          ? "endless"
          : totals.time_s >= LONGEST_s
            ? "time"
            : undefined;
    if (end !== undefined) {
      checkLedger(totals.ledger);
      const distance_m = end === "endless" ? 0 : totals.distance_m;
      return { once, range: { distance_m, end, isThereAndBack, rise_m: climb_J / road.weight_N } };
    }
    before_m = totals.distance_m;
    beforeTarget_m = totals.target_m;
    if (isWhole) repetitionSoc_frac = state.pack.soc_frac;
    if (ways) {
      place_m = ways.placeFrom_m(place_m, isHome ? -covered_m : covered_m);
      isHome = !isHome;
    }
    out.model = isHome ? home : model;
    pass(out, totals, ways ? (isHome ? ways.home(place_m) : ways.out(place_m)) : trace);
  }
}

import { MPS_PER_KMH } from "../../../shared/units.ts";
import { finishInterval } from "../../step/finishInterval.ts";
import { PACK } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { beginRoad, createRunContext } from "../../step/runContext.ts";
import { step } from "../../step/step.ts";
import { checkLedger, createTotals } from "../../step/totals.ts";

/**
 * A steady speed driven until the pack is empty, or too low to give what the speed takes, or until the car falls below it for any other
 * reason or long before.
 */
export interface Hold {
  readonly isHeld: boolean;
  readonly distance_m: number;
  /** Driving was ended after 24 h, the pack not empty: the distance is "at least". */
  readonly isAtLeast: boolean;
  /** Time until then. */
  readonly held_s: number;
  /** What held it back when it became too slow; index into LIMITS, 0 where nothing did. */
  readonly limit: number;
}

/** Longer than on a trace: at one speed nothing changes but charge and heat, and those slowly. */
const STEP_s = 10;
const LONGEST_s = 24 * 3600;
/** A speed counts as held within this. */
const HELD_mps = 0.5 * MPS_PER_KMH;
/** A pack that gives too little for the speed after this share of its window is empty for this speed. Assumed. */
const EMPTY_frac = 0.8;

/** An even slope without an end. */
const ENDLESS_m = 1e9;

/**
 * Drives a prepared car on an even slope, level where none is given, at one speed, from that speed and a pack as charged, charge and
 * temperatures going on. A road that is repeated would give the car its speed back at each repetition; this one has no end.
 */
export function holdSpeed(model: Model, speed_mps: number, sinSlope = 0): Hold {
  const { ceiling_frac, floor_frac } = model.pack;
  const context = createRunContext(model, ceiling_frac);
  const { state, interval } = context;
  const totals = createTotals(state);
  const slope =
    sinSlope === 0
      ? undefined
      : { distance_m: Float64Array.of(0, ENDLESS_m), elevation_m: Float64Array.of(0, sinSlope * ENDLESS_m) };
  beginRoad(context, slope, speed_mps);
  while (!totals.reachedFloor && totals.time_s < LONGEST_s) {
    step(context, speed_mps, STEP_s);
    if (interval.end_mps < speed_mps - HELD_mps) {
      const used_frac = (ceiling_frac - state.pack.soc_frac) / (ceiling_frac - floor_frac);
      const isHeld = interval.limit === PACK && used_frac >= EMPTY_frac;
      return { isHeld, distance_m: totals.distance_m, isAtLeast: false, held_s: totals.time_s, limit: interval.limit };
    }
    finishInterval(context, totals, interval.moving_s);
    state.elevation_m = sinSlope * state.distance_m;
  }
  checkLedger(totals.ledger);
  const isAtLeast = !totals.reachedFloor;
  return { isHeld: true, distance_m: totals.distance_m, isAtLeast, held_s: totals.time_s, limit: 0 };
}

import type { WeekTrip } from "../../../shared/job/schema/week.ts";
import { M_PER_KM, S_PER_H } from "../../../shared/units.ts";
import { greatestWhere } from "../../math/halving.ts";
import { createChannels } from "../../step/channels.ts";
import { homeward, type Model } from "../../step/model.ts";
import { pass } from "../../step/run.ts";
import type { RunContext } from "../../step/runContext.ts";
import { checkLedger, createTotals, type Totals } from "../../step/totals.ts";
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { elevationAt_m } from "../../trace/profileAlong.ts";
import { fromRestToRest } from "../../trace/restToRest.ts";
import type { Trace } from "../../trace/trace.ts";
import { type ThereAndBack, thereAndBack } from "../going/returnTrip.ts";

/** A road of the week in both directions. */
export interface WeekRoad {
  readonly trace: Trace;
  readonly ways: ThereAndBack;
  readonly length_m: number;
  /** It ends as high as it begins, so that it may be driven over and over the same way round. */
  readonly isClosed: boolean;
}

/** Rise over its length up to which a road counts as closed: for a car of 1.5 t 3 J in a metre, where it draws some 500. */
const CLOSED_ratio = 0.0002;
/** A piece of road shorter than this is none. */
const LEAST_m = 1;
/** How hard the car slows where a trip ends within a road: calm driving (assumed), as `fromRestToRest` has it. */
const SLOWING_mps2 = 1;
/** A sample so near to the one before it is that one. */
const SHORT_s = 0.01;
/** Points kept of one leg over hills, its lowest beside them. */
const POINTS = 12;

/** A road made ready for a week. */
export function weekRoad(trace: Trace): WeekRoad {
  const { time_s, speed_mps, profile } = trace;
  const length_m = distanceAlong_m(time_s, speed_mps)[time_s.length - 1];
  const rise_m = profile === undefined ? 0 : elevationAt_m(profile, length_m) - elevationAt_m(profile, 0);
  return { trace, ways: thereAndBack(trace), length_m, isClosed: Math.abs(rise_m) <= CLOSED_ratio * length_m };
}

/** How far a trip is, in metres. */
export function asked_m({ way, distance_km }: Pick<WeekTrip, "way" | "distance_km">, { length_m }: WeekRoad): number {
  return distance_km !== undefined ? distance_km * M_PER_KM : way === "thereAndBack" ? 2 * length_m : length_m;
}

/** Takes the state of charge at a time of the week. */
export type Mark = (at_h: number, soc_frac: number) => void;

/**
 * Drives a trip from the state as it is, and returns its totals. It ends early at the floor, and where the car covers less than half
 * of a leg. `mark` is given the charge at the end of every leg and, where the road has hills, within it.
 *
 * A road goes out, back (from its far end, or from as far out as the kilometres reach), or there and back. Kilometres beyond its length are driven
 * over and over: the same way round where it ends as high as it begins and no wind is on the car, else there and back.
 */
export function driveTrip(
  context: RunContext,
  out: Model,
  road: WeekRoad,
  trip: Pick<WeekTrip, "way" | "distance_km">,
  leaves_h: number,
  mark: Mark,
): Totals {
  const { state } = context;
  const home = out.hasWindHome ? homeward(out) : out;
  const { ways, length_m } = road;
  const turns = trip.way === "thereAndBack" || !road.isClosed || out.hasWindHome;
  const totals = createTotals(state);
  let left_m = asked_m(trip, road);
  const far_m = trip.way === "thereAndBack" && left_m < 2 * length_m ? left_m / 2 : length_m;
  let isHome = trip.way === "back";
  let place_m = isHome ? Math.min(length_m, left_m) : 0;
  while (left_m >= LEAST_m && length_m >= LEAST_m) {
    const leg_m = !turns ? length_m : isHome ? place_m : far_m - place_m;
    const take_m = Math.min(left_m, leg_m);
    if (take_m >= LEAST_m) {
      context.model = isHome ? home : out;
      const before_m = totals.distance_m;
      const from_m = turns || isHome ? place_m : 0;
      const whole = isHome ? ways.home(turns ? from_m : length_m) : ways.out(from_m);
      driveLeg(context, totals, take_m < length_m ? cutAfter(whole, take_m) : whole, leaves_h, mark);
      const covered_m = totals.distance_m - before_m;
      if (totals.reachedFloor || covered_m < 0.5 * take_m) break;
      left_m -= take_m;
      place_m = Math.min(length_m, Math.max(0, isHome ? place_m - covered_m : place_m + covered_m));
    }
    if (turns) isHome = !isHome;
  }
  checkLedger(totals.ledger);
  context.model = out;
  return totals;
}

function driveLeg(context: RunContext, totals: Totals, trace: Trace, leaves_h: number, mark: Mark): void {
  const at_h = (time_s: number) => leaves_h + time_s / S_PER_H;
  if (trace.profile === undefined) {
    pass(context, totals, trace);
  } else {
    const before_s = totals.time_s;
    const channels = createChannels(trace.time_s.length);
    pass(context, totals, trace, channels);
    const { length, soc_frac } = channels;
    let least = 0;
    for (let i = 1; i < length; i++) if (soc_frac[i] < soc_frac[least]) least = i;
    const every = Math.max(1, Math.floor(length / POINTS));
    for (let i = 1; i < length; i++) {
      if (i % every === 0 || i === least) mark(at_h(Math.max(before_s, channels.time_s[i])), soc_frac[i]);
    }
  }
  mark(at_h(totals.time_s), context.state.pack.soc_frac);
}

/** The beginning of a road, so long that the car is at rest after so many metres, slowing as calmly as `fromRestToRest` has it. */
function cutAfter(trace: Trace, distance_m: number): Trace {
  const { time_s, speed_mps } = trace;
  const along_m = distanceAlong_m(time_s, speed_mps);
  const restAfter_m = (moved_m: number, from_mps: number) => moved_m + from_mps ** 2 / (2 * SLOWING_mps2);
  let last = 0;
  for (let i = 1; i < along_m.length - 1 && along_m[i] <= distance_m; i++)
    if (restAfter_m(along_m[i], speed_mps[i]) <= distance_m) last = i;
  const dt_s = time_s[last + 1] - time_s[last];
  const speedAt_mps = (share: number) => speed_mps[last] + share * (speed_mps[last + 1] - speed_mps[last]);
  const share = greatestWhere(0, 1, (part) => {
    const moved_m = 0.5 * (speed_mps[last] + speedAt_mps(part)) * part * dt_s;
    return restAfter_m(along_m[last] + moved_m, speedAt_mps(part)) <= distance_m;
  });
  const times_s = [...time_s.subarray(0, last + 1), time_s[last] + share * dt_s];
  const speeds_mps = [...speed_mps.subarray(0, last + 1), speedAt_mps(share)];
  const rows = share * dt_s > SHORT_s ? times_s.length : times_s.length - 1;
  const cut = fromRestToRest({
    ...trace,
    time_s: Float64Array.from(times_s.slice(0, rows)),
    speed_mps: Float64Array.from(speeds_mps.slice(0, rows)),
  });
  // The road goes on where the car slows, hills and all; a piece put before it would move them along.
  return trace.profile !== undefined && speed_mps[0] === 0 ? { ...cut, profile: trace.profile } : cut;
}

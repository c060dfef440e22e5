import type { Chance } from "../../../math/kalman/backwardSampler.ts";
import type { Steps } from "../../log/steps.ts";
import { writeClock } from "../../log/writeTime.ts";
import type { Segment } from "../gaps/findGaps.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import { type Timeline, timeline } from "../rows/timeline.ts";
import { drawHeights } from "./drawHeights.ts";
import { fitHeightNoise } from "./fitHeightNoise.ts";
import type { HeightNoise } from "./heightModel.ts";
import { mendHeights } from "./mendHeights.ts";
import { smoothHeight } from "./smoothHeight.ts";

/** The steepest public roads rise about one in three; what a log shows beyond is not the road. Common knowledge, no source. */
const STEEPEST_ratio = 0.33;
/** From fewer heights no road is made. */
const LEAST_HEIGHTS = 10;
/** A segment with so many shows the receiver's noise for the whole log. */
const ENOUGH_HEIGHTS = 600;

/** How many heights are drawn and by what chance, and the noise of the heights, once a segment has shown it. */
export interface HeightSetting {
  readonly draws: number;
  readonly chance: Chance;
  readonly heightNoise: { found: HeightNoise | undefined };
}

/** Heights of a segment, one a second: smoothed, and drawn from all that fit the log (`drawn_m[draw * seconds + second]`). */
export interface FoundHeights {
  readonly mean_m: Float64Array;
  /** Undefined where the smoothing is not wanted. */
  readonly drawn_m: Float32Array | undefined;
  /** Climb of the heights as logged. */
  readonly rawClimb_m: number;
}

/**
 * Height at every second of a segment, from the heights of its rows and the distance driven by then: steps and spikes
 * taken out, smoothed along distance. Undefined where fewer than ten rows have one.
 */
export function* findHeights(
  rows: RowColumns,
  segment: Segment,
  distance_m: Float64Array,
  repairs: RepairList,
  utcOffset_s: number,
  { draws, chance, heightNoise }: HeightSetting,
): Steps<FoundHeights | undefined> {
  const line = timeline(rows, segment.from, segment.to);
  const start_s = rows.time_s[segment.from];
  const logged_m = new Float64Array(line.count).fill(Number.NaN);
  const at_m = new Float64Array(line.count);
  let heights = 0;
  for (let k = 0; k < line.count; k++) {
    const into_s = Math.max(0, line.time_s[k] - start_s);
    const second = Math.min(line.seconds - 1, Math.floor(into_s));
    const next = Math.min(line.seconds - 1, second + 1);
    at_m[k] = distance_m[second] + (distance_m[next] - distance_m[second]) * (into_s - second);
    if (line.row[k] >= 0) {
      logged_m[k] = rows.elevation_m[line.row[k]];
      heights += Number.isNaN(logged_m[k]) ? 0 : 1;
    }
  }
  if (heights < LEAST_HEIGHTS) {
    return undefined;
  }
  const rawClimb_m = climbOf(logged_m);
  mendHeights(line.time_s, at_m, logged_m, repairs, utcOffset_s);
  if (!repairs.does("heightNoise")) {
    return { mean_m: onGrid(line, carriedOn(logged_m)), drawn_m: undefined, rawClimb_m };
  }
  const noise = heightNoise.found ?? fitHeightNoise(line.time_s, at_m, logged_m);
  if (heights >= ENOUGH_HEIGHTS) heightNoise.found = noise;
  const mean_m = onGrid(line, smoothHeight(line.time_s, at_m, logged_m, noise));
  const drawn_m = yield* drawHeights(line, at_m, logged_m, noise, draws, chance);
  return { mean_m, drawn_m, rawClimb_m };
}

/** Holds the heights taken to slopes that roads have, in place, and says what of the raw climb is gone. */
export function finishHeights(
  elevation_m: Float64Array,
  distance_m: Float64Array,
  rawClimb_m: number,
  start_s: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  if (repairs.does("gradient")) {
    holdGradient(elevation_m, distance_m, start_s, repairs, utcOffset_s);
  }
  const false_m = Math.round(rawClimb_m - climbOf(elevation_m));
  if (repairs.does("heightNoise") && false_m > 0) {
    const detail = `${false_m} m of climb that the raw heights would add smoothed away`;
    repairs.add("heightNoise", false_m, start_s, start_s + elevation_m.length, detail, false_m);
  }
}

function onGrid(line: Timeline, moments: Float64Array): Float64Array {
  const result = new Float64Array(line.seconds);
  for (let k = 0; k < line.count; k++) {
    if (line.second[k] >= 0) {
      result[line.second[k]] = moments[k];
    }
  }
  return result;
}

/** Sum of all rises, in metres; rows without a height are passed over. */
export function climbOf(elevation_m: Float64Array): number {
  let climb_m = 0;
  let last_m = Number.NaN;
  for (let i = 0; i < elevation_m.length; i++) {
    if (Number.isNaN(elevation_m[i])) {
      continue;
    }
    climb_m += elevation_m[i] > last_m ? elevation_m[i] - last_m : 0;
    last_m = elevation_m[i];
  }
  return climb_m;
}

/** Cuts slopes beyond the steepest; what was cut shifts the rest, so that no new step arises. */
function holdGradient(
  elevation_m: Float64Array,
  distance_m: Float64Array,
  start_s: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  let shift_m = 0;
  let last_m = elevation_m[0];
  let count = 0;
  let first = -1;
  for (let i = 1; i < elevation_m.length; i++) {
    const limit_m = STEEPEST_ratio * (distance_m[i] - distance_m[i - 1]);
    const rise_m = elevation_m[i] - last_m;
    last_m = elevation_m[i];
    const held_m = Math.max(-limit_m, Math.min(limit_m, rise_m));
    if (Math.abs(rise_m - held_m) > 0.01) {
      count++;
      first = first < 0 ? i : first;
    }
    shift_m += held_m - rise_m;
    elevation_m[i] += shift_m;
  }
  if (count > 0) {
    const detail = `${count} s steeper than one in three held to that, first at ${writeClock(start_s + first, utcOffset_s)}`;
    repairs.add("gradient", count, start_s + first, start_s + elevation_m.length, detail);
  }
}

function carriedOn(elevation_m: Float64Array): Float64Array {
  const full = Float64Array.from(elevation_m);
  let last = elevation_m.find((value) => !Number.isNaN(value)) ?? 0;
  for (let i = 0; i < full.length; i++) {
    last = Number.isNaN(full[i]) ? last : full[i];
    full[i] = last;
  }
  return full;
}

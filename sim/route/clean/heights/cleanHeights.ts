import { writeClock } from "../../log/writeTime.ts";
import type { Segment } from "../gaps/findGaps.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import { timeline } from "../rows/timeline.ts";
import { fitHeightNoise } from "./fitHeightNoise.ts";
import { mendHeights } from "./mendHeights.ts";
import { smoothHeight } from "./smoothHeight.ts";

/** The steepest public roads rise about one in three; what a log shows beyond is not the road. Common knowledge, no source. */
const STEEPEST_ratio = 0.33;

/**
 * Height at every second of a segment, from the heights of its rows and the distance driven by then: steps and spikes
 * taken out, smoothed along distance, slopes held to what roads have. NaN throughout where fewer than ten rows have one.
 */
export function cleanHeights(
  rows: RowColumns,
  segment: Segment,
  distance_m: Float64Array,
  repairs: RepairList,
  utcOffset_s: number,
): Float64Array {
  const line = timeline(rows, segment.from, segment.to);
  const start_s = rows.time_s[segment.from];
  const elevation_m = new Float64Array(line.count).fill(Number.NaN);
  const at_m = new Float64Array(line.count);
  let heights = 0;
  for (let k = 0; k < line.count; k++) {
    const into_s = Math.max(0, line.time_s[k] - start_s);
    const second = Math.min(line.seconds - 1, Math.floor(into_s));
    const next = Math.min(line.seconds - 1, second + 1);
    at_m[k] = distance_m[second] + (distance_m[next] - distance_m[second]) * (into_s - second);
    if (line.row[k] >= 0) {
      elevation_m[k] = rows.elevation_m[line.row[k]];
      heights += Number.isNaN(elevation_m[k]) ? 0 : 1;
    }
  }
  const result = new Float64Array(line.seconds).fill(Number.NaN);
  if (heights < 10) {
    return result;
  }
  const rawClimb_m = climbOf(elevation_m);
  mendHeights(line.time_s, at_m, elevation_m, repairs, utcOffset_s);
  const isSmoothing = repairs.does("heightNoise");
  const smoothed = isSmoothing
    ? smoothHeight(line.time_s, at_m, elevation_m, fitHeightNoise(line.time_s, at_m, elevation_m))
    : carriedOn(elevation_m);
  for (let k = 0; k < line.count; k++) {
    if (line.second[k] >= 0) {
      result[line.second[k]] = smoothed[k];
    }
  }
  if (repairs.does("gradient")) {
    holdGradient(result, distance_m, start_s, repairs, utcOffset_s);
  }
  const false_m = Math.round(rawClimb_m - climbOf(result));
  if (isSmoothing && false_m > 0) {
    const detail = `${false_m} m of climb that the raw heights would add smoothed away`;
    repairs.add("heightNoise", false_m, start_s, start_s + line.seconds, detail, false_m);
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

import { crossGap, crossingSpeed_mps } from "./gaps/bridgeGap.ts";
import type { Segment } from "./gaps/findGaps.ts";
import { circuity_ratio, cornerAcross_m } from "./motion/circuity.ts";
import type { SmoothedPositions } from "./motion/smoothPositions.ts";
import type { Timeline } from "./rows/timeline.ts";

/** Replaces the smoother's guess across each driven gap by the plainest drive over its distance. */
export function bridgeSegment(
  segment: Segment,
  line: Timeline,
  speed_mps: Float64Array,
  smoothed: SmoothedPositions | undefined,
): void {
  let k = 0;
  for (const gap of segment.bridges) {
    if (gap.kind === "parked") {
      continue;
    }
    while (k < line.count && line.row[k] !== gap.from) {
      k++;
    }
    const start = k;
    while (k < line.count && line.row[k] !== gap.from + 1) {
      k++;
    }
    const end = Math.min(k, line.count - 1);
    const gap_s = line.time_s[end] - line.time_s[start];
    const [from_mps, to_mps] = [speed_mps[start], speed_mps[end]];
    const distance_m = smoothed
      ? roadAcross_m(line, smoothed, speed_mps, start, end)
      : 0.5 * (from_mps + to_mps) * gap_s;
    const crossing = crossGap(from_mps, to_mps, gap_s, distance_m);
    for (let j = start + 1; j < end; j++) {
      speed_mps[j] = crossingSpeed_mps(crossing, from_mps, to_mps, gap_s, line.time_s[j] - line.time_s[start]);
    }
  }
}

/** Road driven across a gap: two legs round a corner, or the straight line times how much this log's road winds. */
function roadAcross_m(
  line: Timeline,
  smoothed: SmoothedPositions,
  speed_mps: Float64Array,
  start: number,
  end: number,
): number {
  const dEast_m = smoothed.east_m[end] - smoothed.east_m[start];
  const dNorth_m = smoothed.north_m[end] - smoothed.north_m[start];
  const chord_m = Math.hypot(dEast_m, dNorth_m);
  const into = headingNear(line, smoothed, start, -1);
  const outOf = headingNear(line, smoothed, end, 1);
  const corner_m = into && outOf && cornerAcross_m(dEast_m, dNorth_m, into, outOf);
  const circuity = circuity_ratio(
    line,
    smoothed,
    speed_mps,
    start,
    line.time_s[end] - line.time_s[start],
    Math.max(1, chord_m),
  );
  // A sharp corner is its two legs, a sweeping bend is nearer to the line: half-way between, neither is far off.
  return corner_m === undefined ? chord_m * circuity : 0.5 * (corner_m + chord_m * circuity);
}

/** Unit vector of the motion at a moment or, where the car is slow there, up to 15 s away on the side given. */
function headingNear(
  line: Timeline,
  smoothed: SmoothedPositions,
  i: number,
  side: -1 | 1,
): readonly [number, number] | undefined {
  for (let k = i; k >= 0 && k < line.count && Math.abs(line.time_s[k] - line.time_s[i]) < 15; k += side) {
    const [east, north] = [smoothed.eastSpeed_mps[k], smoothed.northSpeed_mps[k]];
    const speed_mps = Math.hypot(east, north);
    if (speed_mps > 2) {
      return [east / speed_mps, north / speed_mps];
    }
  }
  return undefined;
}

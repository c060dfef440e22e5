import { median } from "simple-statistics";
import type { SmoothedPositions } from "./smoothPositions.ts";
import type { Timeline } from "./timeline.ts";

const WINDOWS = 200;
const LEAST_WINDOWS = 8;
const MOST_ratio = 1.35;

/**
 * Road over straight line for pieces of the length of time given, as this log itself shows it where it is whole: the
 * median over up to 200 pieces driven at more than a walk. 1 where the log is too short to tell; at most 1.35, beyond
 * which a gap is better called unknown.
 */
export function winding_ratio(
  line: Timeline,
  smoothed: SmoothedPositions,
  speed_mps: Float64Array,
  piece_s: number,
): number {
  const driven_m = new Float64Array(line.count);
  const isRead = new Int32Array(line.count); // rows of the log up to here, to tell whole pieces from gaps
  for (let i = 1; i < line.count; i++) {
    const dt_s = line.time_s[i] - line.time_s[i - 1];
    driven_m[i] = driven_m[i - 1] + 0.5 * (speed_mps[i] + speed_mps[i - 1]) * dt_s;
    isRead[i] = isRead[i - 1] + (line.row[i] >= 0 ? 1 : 0);
  }
  const usual_rows = (isRead[line.count - 1] / Math.max(1, line.time_s[line.count - 1] - line.time_s[0])) * piece_s;
  const every = Math.max(1, Math.floor(line.count / WINDOWS));
  const ratios: number[] = [];
  let end = 0;
  for (let start = 0; start < line.count; start += every) {
    while (end < line.count && line.time_s[end] - line.time_s[start] < piece_s) {
      end++;
    }
    if (end >= line.count) {
      break;
    }
    const road_m = driven_m[end] - driven_m[start];
    const isWhole = isRead[end] - isRead[start] > 0.9 * usual_rows;
    if (isWhole && road_m > 2 * piece_s) {
      const east_m = smoothed.east_m[end] - smoothed.east_m[start];
      const north_m = smoothed.north_m[end] - smoothed.north_m[start];
      ratios.push(road_m / Math.max(1, Math.hypot(east_m, north_m)));
    }
  }
  return ratios.length < LEAST_WINDOWS ? 1 : Math.min(MOST_ratio, Math.max(1, median(ratios)));
}

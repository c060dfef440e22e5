import type { Segment } from "./gaps/findGaps.ts";
import { countValues } from "./rows/countValues.ts";
import type { Plane } from "./rows/plane.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import type { Timeline } from "./rows/timeline.ts";
import type { SegmentSetting } from "./segmentSetting.ts";

/** A receiver that starts again after a parking may be off by some 40 m, and its car has not moved. */
const PARKED_OFFSET_m2 = 1600;

/** What the log says at each moment of a segment's timeline; NaN where it says nothing. */
export interface Moments {
  readonly time_s: Float64Array;
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
  readonly speed_mps: Float64Array;
  /** Variance by which the positions' offset may have changed at this moment. */
  readonly offset_m2: Float64Array;
  /** Moments that have a position. */
  readonly positions: number;
}

/** The rows of a segment laid out along its timeline, recorded speeds scaled. */
export function segmentMoments(
  rows: RowColumns,
  segment: Segment,
  line: Timeline,
  plane: Plane,
  setting: SegmentSetting,
): Moments {
  const n = line.count;
  const east_m = new Float64Array(n).fill(Number.NaN);
  const north_m = new Float64Array(n).fill(Number.NaN);
  const speed_mps = new Float64Array(n).fill(Number.NaN);
  const offset_m2 = new Float64Array(n);
  const parkedBefore = new Set(segment.bridges.filter((gap) => gap.kind === "parked").map((gap) => gap.from + 1));
  for (let k = 0; k < n; k++) {
    const row = line.row[k];
    if (row < 0) {
      continue;
    }
    east_m[k] = plane.east_m[row - segment.from];
    north_m[k] = plane.north_m[row - segment.from];
    speed_mps[k] = rows.speed_mps[row] * setting.speedScale.ratio;
    offset_m2[k] = setting.offsets.get(row) ?? (parkedBefore.has(row) ? PARKED_OFFSET_m2 : 0);
  }
  return { time_s: line.time_s, east_m, north_m, speed_mps, offset_m2, positions: countValues(east_m) };
}

import type { Segment } from "./gaps/findGaps.ts";
import type { SmoothedPositions } from "./motion/smoothPositions.ts";
import { Mended } from "./report/cleanedLog.ts";
import type { Plane } from "./rows/plane.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import type { Timeline } from "./rows/timeline.ts";

/** One segment at one row a second, before heights. */
export interface CleanedSegment {
  readonly start_s: number;
  readonly speed_mps: Float64Array;
  /** Bits of `Mended`. */
  readonly flags: Uint8Array;
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
}

/** What was found at each moment of a segment's timeline. */
interface FoundAtMoments {
  readonly isDriven: Uint8Array;
  readonly smoothed: SmoothedPositions | undefined;
}

/** The moments of a segment that fall on whole seconds from its first row, with positions back in degrees; speeds still 0. */
export function segmentGrid(
  rows: RowColumns,
  segment: Segment,
  line: Timeline,
  plane: Plane,
  { isDriven, smoothed }: FoundAtMoments,
): CleanedSegment {
  const result = emptySegment(rows, segment, line);
  let lastPlaced = -1;
  for (let k = 0; k < line.count; k++) {
    const row = line.row[k];
    if (row >= 0 && !Number.isNaN(rows.latitude_deg[row])) {
      lastPlaced = row;
    }
    const second = line.second[k];
    if (second < 0) {
      continue;
    }
    result.flags[second] = isDriven[k] ? Mended.bridged : 0;
    if (smoothed && lastPlaced >= 0) {
      const from = lastPlaced - segment.from;
      const [east_m, north_m] = [smoothed.east_m[k] - plane.east_m[from], smoothed.north_m[k] - plane.north_m[from]];
      place(result, second, rows, lastPlaced, east_m, north_m);
    }
  }
  return result;
}

/** A segment of which nothing is known but where it began: standing there throughout. */
export function standingSegment(rows: RowColumns, segment: Segment, line: Timeline): CleanedSegment {
  const result = emptySegment(rows, segment, line);
  const where = segment.from;
  if (!Number.isNaN(rows.latitude_deg[where])) {
    result.latitude_deg.fill(rows.latitude_deg[where]);
    result.longitude_deg.fill(rows.longitude_deg[where]);
  }
  return result;
}

/** Metres of a degree are taken at the nearby fix: the smoothed place lies within metres of it. */
function place(
  result: CleanedSegment,
  second: number,
  rows: RowColumns,
  row: number,
  east_m: number,
  north_m: number,
): void {
  const latitude_rad = (rows.latitude_deg[row] * Math.PI) / 180;
  result.latitude_deg[second] = rows.latitude_deg[row] + north_m / 111200;
  result.longitude_deg[second] = rows.longitude_deg[row] + east_m / (111320 * Math.max(0.01, Math.cos(latitude_rad)));
}

function emptySegment(rows: RowColumns, segment: Segment, line: Timeline): CleanedSegment {
  return {
    start_s: rows.time_s[segment.from],
    speed_mps: new Float64Array(line.seconds),
    flags: new Uint8Array(line.seconds),
    latitude_deg: new Float64Array(line.seconds).fill(Number.NaN),
    longitude_deg: new Float64Array(line.seconds).fill(Number.NaN),
  };
}

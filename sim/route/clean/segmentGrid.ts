import { Mended } from "./report/cleanedLog.ts";
import type { Stretch } from "./gaps/findGaps.ts";
import type { Plane } from "./rows/plane.ts";
import type { RowColumns } from "./rows/rowColumns.ts";
import type { SmoothedPositions } from "./motion/smoothPositions.ts";
import type { Timeline } from "./rows/timeline.ts";

/** One stretch at one row a second, before heights. */
export interface CleanedStretch {
  readonly start_s: number;
  readonly speed_mps: Float64Array;
  /** Bits of `Mended`. */
  readonly flags: Uint8Array;
  readonly lat_deg: Float64Array;
  readonly lon_deg: Float64Array;
}

/** What was found at each moment of a stretch's timeline. */
interface FoundAtMoments {
  readonly speed_mps: Float64Array;
  readonly isStanding: Uint8Array;
  readonly isDriven: Uint8Array;
  readonly smoothed: SmoothedPositions | undefined;
}

/** The moments of a stretch that fall on whole seconds from its first row, with positions back in degrees. */
export function stretchGrid(
  rows: RowColumns,
  stretch: Stretch,
  line: Timeline,
  plane: Plane,
  { speed_mps, isStanding, isDriven, smoothed }: FoundAtMoments,
): CleanedStretch {
  const result = emptyStretch(rows, stretch, line);
  let lastPlaced = -1;
  for (let k = 0; k < line.count; k++) {
    const row = line.row[k];
    if (row >= 0 && !Number.isNaN(rows.lat_deg[row])) {
      lastPlaced = row;
    }
    const second = line.second[k];
    if (second < 0) {
      continue;
    }
    result.speed_mps[second] = speed_mps[k];
    result.flags[second] = (isStanding[k] ? Mended.standing : 0) | (isDriven[k] ? Mended.bridged : 0);
    if (smoothed && lastPlaced >= 0) {
      const from = lastPlaced - stretch.from;
      const [east_m, north_m] = [smoothed.east_m[k] - plane.east_m[from], smoothed.north_m[k] - plane.north_m[from]];
      place(result, second, rows, lastPlaced, east_m, north_m);
    }
  }
  return result;
}

/** A stretch of which nothing is known but where it began: standing there throughout. */
export function standingStretch(rows: RowColumns, stretch: Stretch, line: Timeline): CleanedStretch {
  const result = emptyStretch(rows, stretch, line);
  const where = stretch.from;
  if (!Number.isNaN(rows.lat_deg[where])) {
    result.lat_deg.fill(rows.lat_deg[where]);
    result.lon_deg.fill(rows.lon_deg[where]);
  }
  return result;
}

/** Metres of a degree are taken at the nearby fix: the smoothed place lies within metres of it. */
function place(
  result: CleanedStretch,
  second: number,
  rows: RowColumns,
  row: number,
  east_m: number,
  north_m: number,
): void {
  const lat_rad = (rows.lat_deg[row] * Math.PI) / 180;
  result.lat_deg[second] = rows.lat_deg[row] + north_m / 111200;
  result.lon_deg[second] = rows.lon_deg[row] + east_m / (111320 * Math.max(0.01, Math.cos(lat_rad)));
}

function emptyStretch(rows: RowColumns, stretch: Stretch, line: Timeline): CleanedStretch {
  return {
    start_s: rows.time_s[stretch.from],
    speed_mps: new Float64Array(line.seconds),
    flags: new Uint8Array(line.seconds),
    lat_deg: new Float64Array(line.seconds).fill(Number.NaN),
    lon_deg: new Float64Array(line.seconds).fill(Number.NaN),
  };
}

import { inputError } from "../../shared/problems.ts";
import { type CleanedLog, Mended } from "./cleanedLog.ts";

interface MapOptions {
  /** Length cut from the beginning and the end of every stretch, so that a map does not show where someone lives. */
  readonly cutEnds_m?: number | undefined;
  /** Most points drawn; the track is thinned evenly to it. */
  readonly mostPoints?: number | undefined;
}

/** A track to be drawn: columns of one length. `starts` holds the index at which each unbroken line begins. */
interface MapTrack {
  readonly lat_deg: Float64Array;
  readonly lon_deg: Float64Array;
  readonly speed_mps: Float64Array;
  /** 1 where the track is bridged, put back or held to what a car can do, and so not as it was logged. */
  readonly isMended: Uint8Array;
  readonly starts: readonly number[];
}

/**
 * The cleaned track for a map, thinned, and with the ends of every stretch cut on request. Undefined where the log has no
 * positions, or where they are gone because it was not kept with them.
 */
export function mapTrack(cleaned: CleanedLog, options: MapOptions = {}): MapTrack | undefined {
  const { series, track } = cleaned;
  const { cutEnds_m = 0, mostPoints = 3000 } = options;
  if (!(cutEnds_m >= 0 && cutEnds_m <= 5000 && mostPoints >= 2)) {
    throw inputError(
      "badOption",
      "cutEnds_m",
      `found ${cutEnds_m} m and ${mostPoints} points, allowed are 0 to 5000 m and 2 or more`,
    );
  }
  if (!track) {
    return undefined;
  }
  const every = Math.max(1, Math.ceil(series.count / mostPoints));
  const rows: number[] = [];
  const starts: number[] = [];
  let from = 0;
  for (const end of [...series.breaks, series.count]) {
    const first_m = series.distance_m[from] + cutEnds_m;
    const last_m = series.distance_m[end - 1] - cutEnds_m;
    let isBegun = false;
    for (let i = from; i < end; i++) {
      const isInside = series.distance_m[i] >= first_m && series.distance_m[i] <= last_m;
      if (!isInside || Number.isNaN(track.lat_deg[i]) || ((i - from) % every !== 0 && i !== end - 1)) {
        continue;
      }
      if (!isBegun) {
        starts.push(rows.length);
        isBegun = true;
      }
      rows.push(i);
    }
    from = end;
  }
  const mended = Mended.bridged | Mended.limited | Mended.multipath;
  return {
    lat_deg: Float64Array.from(rows, (i) => track.lat_deg[i]),
    lon_deg: Float64Array.from(rows, (i) => track.lon_deg[i]),
    speed_mps: Float64Array.from(rows, (i) => series.speed_mps[i]),
    isMended: Uint8Array.from(rows, (i) => ((series.flags[i] & mended) !== 0 ? 1 : 0)),
    starts,
  };
}

import { type CleanedSeries, Mended, type Track } from "./report/cleanedLog.ts";
import type { CleanedStretch } from "./segmentGrid.ts";

/** A cleaned stretch with the distance driven in it and the height of the road at every second. */
export interface WholeStretch extends CleanedStretch {
  readonly distance_m: Float64Array;
  readonly height_m: Float64Array;
}

/** All stretches as one series and one track, one after another; distance stands still between them. */
export function joinStretches(parts: readonly WholeStretch[]): {
  readonly series: CleanedSeries;
  readonly track: Track;
} {
  const count = parts.reduce((sum, part) => sum + part.speed_mps.length, 0);
  const column = () => new Float64Array(count);
  const series = {
    count,
    time_s: column(),
    speed_mps: column(),
    distance_m: column(),
    height_m: column(),
    flags: new Uint8Array(count),
    breaks: [] as number[],
  };
  const track = { lat_deg: column(), lon_deg: column() };
  let at = 0;
  let from_m = 0;
  parts.forEach((part, p) => {
    if (p > 0) {
      series.breaks.push(at);
    }
    for (let i = 0; i < part.speed_mps.length; i++) {
      series.time_s[at + i] = part.start_s + i;
      series.distance_m[at + i] = from_m + part.distance_m[i];
    }
    series.speed_mps.set(part.speed_mps, at);
    series.height_m.set(part.height_m, at);
    series.flags.set(part.flags, at);
    track.lat_deg.set(part.lat_deg, at);
    track.lon_deg.set(part.lon_deg, at);
    at += part.speed_mps.length;
    from_m += part.distance_m[part.distance_m.length - 1] ?? 0;
  });
  return { series, track };
}

/** Marks the seconds whose positions were put back; spans come in order of time. */
export function markSpans(series: CleanedSeries, spans: readonly (readonly [number, number])[]): void {
  let i = 0;
  for (const [from_s, to_s] of spans) {
    while (i < series.count && series.time_s[i] < from_s) {
      i++;
    }
    for (; i < series.count && series.time_s[i] <= to_s; i++) {
      series.flags[i] |= Mended.multipath;
    }
  }
}

import { type CleanedSeries, Mended, type Track } from "./report/cleanedLog.ts";
import type { Piece } from "./report/spread.ts";
import type { CleanedSegment } from "./segmentGrid.ts";

/** A cleaned segment with the distance driven in it and the height of the road at every second. */
export interface WholeSegment extends CleanedSegment {
  readonly distance_m: Float64Array;
  readonly elevation_m: Float64Array;
  readonly middleElevation_m: Float64Array;
  /** Rows count from the segment's start. */
  readonly pieces: readonly Piece[];
}

/** All segments as one series and one track, one after another; distance stands still between them. */
export function joinSegments(parts: readonly WholeSegment[]): {
  readonly series: CleanedSeries;
  readonly track: Track;
  /** Rows count from the series' start. */
  readonly pieces: readonly Piece[];
} {
  const count = parts.reduce((sum, part) => sum + part.speed_mps.length, 0);
  const column = () => new Float64Array(count);
  const series = {
    count,
    time_s: column(),
    speed_mps: column(),
    distance_m: column(),
    elevation_m: column(),
    middleElevation_m: column(),
    flags: new Uint8Array(count),
    breaks: [] as number[],
  };
  const track = { latitude_deg: column(), longitude_deg: column() };
  const pieces: Piece[] = [];
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
    series.elevation_m.set(part.elevation_m, at);
    series.middleElevation_m.set(part.middleElevation_m, at);
    series.flags.set(part.flags, at);
    track.latitude_deg.set(part.latitude_deg, at);
    track.longitude_deg.set(part.longitude_deg, at);
    for (const piece of part.pieces) pieces.push({ ...piece, from: at + piece.from, to: at + piece.to });
    at += part.speed_mps.length;
    from_m += part.distance_m[part.distance_m.length - 1] ?? 0;
  });
  return { series, track, pieces };
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

import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import type { Profile, Trace } from "../../../sim/index.ts";
import type { MadeRoad } from "./roadsApi.ts";

/** Heights nearer to each other than this say nothing that a road does not, and their rounding would look like a slope. */
const SPACING_m = 5;
/** What a straight line may miss a height by: far less than the heights are sure to. */
const OFF_m = 0.1;
/** Points of height that a job takes for one road; months of driving are drawn in coarser lines, never refused for it. */
const MOST_POINTS = 100_000;

/**
 * A trace as the job file keeps it: times to a millisecond, speeds to 0.001 km/h, hills to a metre of road and 0.1 m of
 * height, and how far the log left it open. Nothing of where or when is in it.
 */
export function roadOfTrace(trace: Trace, title: string): MadeRoad {
  const { time_s, speed_mps, profile } = trace;
  const last = time_s.length - 1;
  let distance_m = 0;
  for (let i = 1; i <= last; i++) distance_m += 0.5 * (speed_mps[i] + speed_mps[i - 1]) * (time_s[i] - time_s[i - 1]);
  const hills = profile && hillsOf(profile);
  const times_s = Array.from(time_s, (each) => rounded(each, 1e3));
  return {
    road: {
      kind: "trace",
      title,
      time_s: times_s,
      speed_kmh: Array.from(speed_mps, (each) => rounded(each / MPS_PER_KMH, 1e3)),
      ...(hills && { hills }),
      ...(trace.spread && { spread: spreadOf(trace.spread) }),
    },
    distance_m,
    duration_s: time_s[last],
  };
}

/**
 * A profile as the job file keeps it: only the points that a straight line between their neighbours would miss by more
 * than 0.1 m (Ramer's way of thinning a line), none nearer than 5 m to the next. Nothing where it is no longer than that.
 * Where more points than `most` would be left, lines may miss by twice as much, and so on.
 */
export function hillsOf(profile: Profile, most = MOST_POINTS) {
  const { distance_m, elevation_m } = profile;
  let kept = keptPoints(profile, OFF_m);
  for (let off_m = 2 * OFF_m; kept.length > most; off_m *= 2) kept = keptPoints(profile, off_m);
  if (kept.length < 2) return undefined;
  const first_m = distance_m[0];
  return {
    distance_km: kept.map((i) => rounded((distance_m[i] - first_m) / M_PER_KM, 1e3)),
    elevation_m: kept.map((i) => rounded(elevation_m[i], 10)),
  };
}

/** Rows that lines through them need, so as to miss no height by more than `off_m`. */
function keptPoints({ distance_m, elevation_m }: Profile, off_m: number): number[] {
  const last = distance_m.length - 1;
  const needed = thinned(distance_m, elevation_m, off_m);
  const kept: number[] = [];
  for (let i = 0; i <= last; i++) {
    if (!needed[i]) continue;
    const before = kept.at(-1);
    if (before !== undefined && distance_m[i] - distance_m[before] < SPACING_m) {
      if (i !== last || kept.length === 1) continue;
      kept.pop(); // the end itself counts more than a point just before it
    }
    kept.push(i);
  }
  return kept;
}

/** 1 for every point that is kept. */
function thinned(distance_m: Float64Array, elevation_m: Float64Array, allowed_m: number): Uint8Array {
  const last = distance_m.length - 1;
  const needed = new Uint8Array(last + 1);
  needed[0] = 1;
  needed[last] = 1;
  const pieces: [number, number][] = [[0, last]];
  for (let piece = pieces.pop(); piece; piece = pieces.pop()) {
    const [from, to] = piece;
    const slope = (elevation_m[to] - elevation_m[from]) / (distance_m[to] - distance_m[from]);
    let farthest = from;
    let off_m = allowed_m;
    for (let i = from + 1; i < to; i++) {
      const away_m = Math.abs(elevation_m[i] - elevation_m[from] - slope * (distance_m[i] - distance_m[from]));
      if (away_m > off_m) [farthest, off_m] = [i, away_m];
    }
    if (farthest === from) continue;
    needed[farthest] = 1;
    pieces.push([from, farthest], [farthest, to]);
  }
  return needed;
}

/** A spread to a thousandth and to a metre of climb; a log that knows nothing is written as ten times either way. */
function spreadOf({ energy_ratio, distance_ratio, climb_m }: NonNullable<Trace["spread"]>) {
  const ratio = (each: number) => rounded(Math.min(10, Math.max(0.1, each)), 1e3);
  return {
    energy_ratio: { low: ratio(energy_ratio.low), high: ratio(energy_ratio.high) },
    distance_ratio: { low: ratio(distance_ratio.low), high: ratio(distance_ratio.high) },
    climb_m: { low: rounded(climb_m.low, 1), high: rounded(climb_m.high, 1) },
  };
}

function rounded(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit;
}

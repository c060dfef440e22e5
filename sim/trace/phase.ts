import { distanceAlong_m } from "./distanceAlong.ts";
import { elevationAt_m } from "./profileAlong.ts";
import type { Profile, Trace } from "./trace.ts";

/**
 * The part of a trace between two times in seconds, its clock and its distance counted from 0 again. A cut between two
 * samples gets a row of its own on the straight line between them; heights keep their value. The caller has checked
 * 0 <= from_s < to_s <= duration.
 */
export function phase(trace: Trace, from_s: number, to_s: number): Trace {
  const { time_s } = trace;
  if (!(from_s >= 0 && from_s < to_s && to_s <= time_s[time_s.length - 1]))
    throw new Error(`a trace of ${time_s[time_s.length - 1]} s has no phase from ${from_s} s to ${to_s} s`);
  const rows_s = [from_s, ...time_s.filter((row_s) => row_s > from_s && row_s < to_s), to_s];
  const cut = {
    id: trace.id,
    title: trace.title,
    time_s: Float64Array.from(rows_s, (row_s) => row_s - from_s),
    speed_mps: Float64Array.from(rows_s, (row_s) => speedAt_mps(trace, row_s)),
  };
  if (!trace.profile) return cut;
  const before_m = placeAt_m(trace, from_s);
  return { ...cut, profile: partOf(trace.profile, before_m, placeAt_m(trace, to_s)) };
}

/** Heights between two places, distance counted from the first of them; the places themselves become points. */
function partOf(profile: Profile, from_m: number, to_m: number): Profile {
  const inner_m = profile.distance_m.filter((place_m) => place_m > from_m && place_m < to_m);
  const places_m = [from_m, ...inner_m, to_m];
  return {
    distance_m: Float64Array.from(places_m, (place_m) => place_m - from_m),
    elevation_m: Float64Array.from(places_m, (place_m) => elevationAt_m(profile, place_m)),
  };
}

function intervalOf({ time_s }: Trace, at_s: number): number {
  let i = 0;
  while (i < time_s.length - 2 && time_s[i + 1] <= at_s) i++;
  return i;
}

function speedAt_mps(trace: Trace, at_s: number): number {
  const { time_s, speed_mps } = trace;
  const i = intervalOf(trace, at_s);
  if (at_s === time_s[i + 1]) return speed_mps[i + 1];
  return speed_mps[i] + ((at_s - time_s[i]) / (time_s[i + 1] - time_s[i])) * (speed_mps[i + 1] - speed_mps[i]);
}

function placeAt_m(trace: Trace, at_s: number): number {
  const { time_s, speed_mps } = trace;
  const i = intervalOf(trace, at_s);
  const mean_mps = 0.5 * (speed_mps[i] + speedAt_mps(trace, at_s));
  return distanceAlong_m(time_s, speed_mps)[i] + mean_mps * (at_s - time_s[i]);
}

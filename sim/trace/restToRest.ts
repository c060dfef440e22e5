import { distanceAlong_m } from "./distanceAlong.ts";
import { elevationAt_m } from "./profileAlong.ts";
import type { Profile, RestAdded, Trace } from "./trace.ts";

/** How hard the car pulls away and slows in the added pieces: calm driving (assumed). */
const ADDED_mps2 = 1;
/** Slower than this is rest, noise of a recording: no wheel that turns is measured as slowly. */
const AT_REST_mps = 0.01;

/**
 * The same road from rest to rest: where a trace begins or ends in motion, a piece at 1 m/s2 from or to rest is put before or after
 * it, on level ground at the height of that end, and `restAdded` says so. Otherwise the motion would be energy from nowhere: driven
 * over and over, each repetition would begin with it anew.
 *
 *   t = v / a,  s = v² / 2a
 *
 * A first or last speed below 0.01 m/s becomes 0. A trace that begins and ends at rest is returned as it is.
 */
export function fromRestToRest(trace: Trace): Trace {
  const { time_s, speed_mps, profile } = trace;
  const last = time_s.length - 1;
  if (speed_mps[0] === 0 && speed_mps[last] === 0) return trace;
  const start_mps = speed_mps[0] < AT_REST_mps ? 0 : speed_mps[0];
  const end_mps = speed_mps[last] < AT_REST_mps ? 0 : speed_mps[last];
  const added: RestAdded = {
    start_mps,
    before_s: start_mps / ADDED_mps2,
    before_m: start_mps ** 2 / (2 * ADDED_mps2),
    end_mps,
    after_s: end_mps / ADDED_mps2,
    after_m: end_mps ** 2 / (2 * ADDED_mps2),
  };
  const rows_s = Array.from(time_s, (row_s) => row_s + added.before_s);
  const rows_mps = [start_mps, ...speed_mps.subarray(1, last), end_mps];
  if (start_mps > 0) {
    rows_s.unshift(0);
    rows_mps.unshift(0);
  }
  if (end_mps > 0) {
    rows_s.push(rows_s[rows_s.length - 1] + added.after_s);
    rows_mps.push(0);
  }
  const road_m = distanceAlong_m(time_s, speed_mps)[last];
  return {
    ...trace,
    time_s: Float64Array.from(rows_s),
    speed_mps: Float64Array.from(rows_mps),
    ...(profile ? { profile: levelAtEnds(profile, added, road_m) } : {}),
    ...(start_mps > 0 || end_mps > 0 ? { restAdded: added } : {}),
  };
}

/** The heights moved along by the piece before the road, and cut to the road's length where one follows, so that both are level. */
function levelAtEnds(profile: Profile, { before_m, after_m }: RestAdded, road_m: number): Profile {
  const distances: number[] = [];
  const heights: number[] = [];
  const put = (distance_m: number, elevation_m: number) => {
    // There is one height to a place.
    if (distances.length > 0 && distance_m <= distances[distances.length - 1]) return;
    distances.push(distance_m);
    heights.push(elevation_m);
  };
  if (before_m > 0) put(0, profile.elevation_m[0]);
  profile.distance_m.forEach((distance_m, i) => {
    if (after_m === 0 || distance_m < road_m) put(before_m + distance_m, profile.elevation_m[i]);
  });
  if (after_m > 0) {
    const end_m = elevationAt_m(profile, road_m);
    put(before_m + road_m, end_m);
    put(before_m + road_m + after_m, end_m);
  }
  return { distance_m: Float64Array.from(distances), elevation_m: Float64Array.from(heights) };
}

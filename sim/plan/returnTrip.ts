import { distanceAlong_m } from "../trace/distanceAlong.ts";
import type { Profile, Trace } from "../trace/trace.ts";

/** Roads that end further above or below their start are driven there and back. */
const LEVEL_m = 20;

/** Whether a road ends so far above or below its start that driving it over and over would only climb or only descend. */
export function endsElsewhere(trace: Trace): boolean {
  const heights_m = trace.profile?.elevation_m;
  return heights_m !== undefined && Math.abs(heights_m[heights_m.length - 1] - heights_m[0]) > LEVEL_m;
}

/**
 * The same road driven home: its speeds in reverse order of time, its heights in reverse order of distance, beginning where the
 * trace's own distance ends. Speeding up becomes slowing down and the other way, which a real way home does not do; its stops and
 * its hills are right.
 */
export function returnTrip(trace: Trace): Trace {
  const { time_s, speed_mps, profile } = trace;
  const last = time_s.length - 1;
  const back: Trace = {
    ...trace,
    time_s: time_s.map((_, i) => time_s[last] - time_s[last - i]),
    speed_mps: speed_mps.map((_, i) => speed_mps[last - i]),
  };
  return profile ? { ...back, profile: reversed(profile, distanceAlong_m(time_s, speed_mps)[last]) } : back;
}

/** Heights against the distance still to go; where the profile is shorter than the road it ends level. */
function reversed(profile: Profile, length_m: number): Profile {
  const { distance_m, elevation_m } = profile;
  const n = distance_m.length;
  const end_m = Math.max(length_m, distance_m[n - 1]);
  const isShort = length_m > distance_m[n - 1];
  const distances = Array.from({ length: n }, (_, i) => end_m - distance_m[n - 1 - i]);
  const heights = Array.from({ length: n }, (_, i) => elevation_m[n - 1 - i]);
  if (isShort) {
    distances.unshift(0);
    heights.unshift(elevation_m[n - 1]);
  }
  return { distance_m: Float64Array.from(distances), elevation_m: Float64Array.from(heights) };
}

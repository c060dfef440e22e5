import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { elevationAt_m } from "../../trace/profileAlong.ts";
import type { Profile, Trace } from "../../trace/trace.ts";

/** One road in both directions, for a car that begins each way where it stands. */
export interface ThereAndBack {
  /** The way out from a place along the road, level beyond its end. */
  readonly out: (place_m: number) => Trace;
  /** The way home from a place: speeds in reverse order of time, heights back to the beginning, level beyond. */
  readonly home: (place_m: number) => Trace;
  /** The place after so many metres from another one, negative towards home; within the road. */
  readonly placeFrom_m: (place_m: number, moved_m: number) => number;
}

/** Places nearer than this share of the road's length to one of its ends are that end: sums of distances are rounded. */
const ROUNDING_frac = 1e-9;

/**
 * A road there and back. Speeding up becomes slowing down on the way home and the other way round, which a real way home does not do;
 * its stops and its hills are right. A car that fell behind on one way begins the next where it stands, so that no height is gained
 * without a climb.
 */
export function thereAndBack(trace: Trace): ThereAndBack {
  const { time_s, speed_mps, profile } = trace;
  const last = time_s.length - 1;
  const length_m = distanceAlong_m(time_s, speed_mps)[last];
  const reversed: Trace = {
    ...trace,
    time_s: time_s.map((_, i) => time_s[last] - time_s[last - i]),
    speed_mps: speed_mps.map((_, i) => speed_mps[last - i]),
  };
  const placeFrom_m = (place_m: number, moved_m: number) => {
    const to_m = place_m + moved_m;
    if (to_m < ROUNDING_frac * length_m) return 0;
    return to_m > (1 - ROUNDING_frac) * length_m ? length_m : to_m;
  };
  if (profile === undefined) return { out: () => trace, home: () => reversed, placeFrom_m };
  return {
    out: kept((place_m) =>
      place_m === 0 ? trace : { ...trace, profile: heights(profile, place_m, length_m, (at_m) => at_m - place_m) },
    ),
    home: kept((place_m) => ({ ...reversed, profile: heights(profile, place_m, 0, (at_m) => place_m - at_m) })),
    placeFrom_m,
  };
}

/** The same as `make`, which is not called anew for the place that it was called for last. */
function kept(make: (place_m: number) => Trace): (place_m: number) => Trace {
  let last: { readonly place_m: number; readonly trace: Trace } | undefined;
  return (place_m) => {
    if (last?.place_m !== place_m) last = { place_m, trace: make(place_m) };
    return last.trace;
  };
}

/** Heights on the way from one place to another, against the distance from the first. A way of no length is level. */
function heights(profile: Profile, from_m: number, to_m: number, along_m: (place_m: number) => number): Profile {
  const start_m = elevationAt_m(profile, from_m);
  if (from_m === to_m) return { distance_m: Float64Array.of(0, 1), elevation_m: Float64Array.of(start_m, start_m) };
  const [low_m, high_m] = from_m < to_m ? [from_m, to_m] : [to_m, from_m];
  const between = profile.distance_m.filter((place_m) => place_m > low_m && place_m < high_m);
  if (to_m < from_m) between.reverse();
  const places_m = [from_m, ...between, to_m];
  return {
    distance_m: Float64Array.from(places_m, along_m),
    elevation_m: Float64Array.from(places_m, (place_m) => elevationAt_m(profile, place_m)),
  };
}

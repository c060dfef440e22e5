import { inputError } from "../../../shared/problems.ts";
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { profileAlong } from "../../trace/profileAlong.ts";
import type { Profile, Trace } from "../../trace/trace.ts";

/** Speed and height at one row a second, as trips have them. */
export interface SpeedAndHeight {
  readonly speed_mps: Float64Array;
  readonly elevation_m: Float64Array;
}

/** Points of a profile need not lie nearer than this: the smoothed height is straight over more. */
const SPACING_m = 10;

/** A trip is cut where the car stands, so a crawl at its first or last second is a rest that was not caught. Walking pace, assumed. */
const CRAWL_mps = 1;

/**
 * The trace of a trip: time from 0, speed, and height against distance where the log has heights. Positions and the
 * date are not in it, and cannot be: nothing of where or when goes into job files.
 */
export function toTrace(trip: SpeedAndHeight, id: string, title: string): Trace {
  const time_s = Float64Array.from(trip.speed_mps, (_, i) => i);
  const speed_mps = Float64Array.from(trip.speed_mps);
  for (const end of [0, speed_mps.length - 1]) if (speed_mps[end] < CRAWL_mps) speed_mps[end] = 0;
  const profile = profileOf(distanceAlong_m(time_s, speed_mps), trip.elevation_m);
  const trace = { id, title, time_s, speed_mps };
  return profile ? { ...trace, profile } : trace;
}

/**
 * All trips as one trace, one after another with a second of rest between those that end and begin at rest. Each trip's
 * heights are shifted to begin where the last one ended, since a parked car does not climb. A trip without heights counts as
 * level, as all of them do where none has any; the quality of the log says for how much of the way that is so. Throws
 * `InputError` where there is no trip.
 */
export function wholeTrace(trips: readonly SpeedAndHeight[], id: string, title: string): Trace {
  if (trips.length === 0) {
    throw inputError("noTrips", id, "found no trip in the log, wanted at least one drive of 50 m");
  }
  const length = trips.reduce((sum, trip) => sum + trip.speed_mps.length, 0);
  const speed_mps = new Float64Array(length);
  const elevation_m = new Float64Array(length);
  let at = 0;
  let last_m = trips.find(hasHeights)?.elevation_m[0] ?? Number.NaN;
  for (const trip of trips) {
    speed_mps.set(trip.speed_mps, at);
    const isKnown = hasHeights(trip);
    for (let i = 0; i < trip.speed_mps.length; i++) {
      elevation_m[at + i] = isKnown ? trip.elevation_m[i] + (last_m - trip.elevation_m[0]) : last_m;
    }
    at += trip.speed_mps.length;
    last_m = elevation_m[at - 1];
  }
  return toTrace({ speed_mps, elevation_m }, id, title);
}

/** A trip has heights throughout or not at all: they are cleaned a segment at a time, and no trip runs over a break. */
function hasHeights({ elevation_m }: SpeedAndHeight): boolean {
  return elevation_m.every((each_m) => !Number.isNaN(each_m));
}

function profileOf(distance_m: Float64Array, elevation_m: Float64Array): Profile | undefined {
  const places: number[] = [];
  const heights: number[] = [];
  const last = distance_m.length - 1;
  for (let i = 0; i <= last; i++) {
    if (Number.isNaN(elevation_m[i])) {
      return undefined;
    }
    const isFar = places.length === 0 || distance_m[i] - places[places.length - 1] >= SPACING_m;
    if (isFar || i === last) {
      places.push(distance_m[i]);
      heights.push(elevation_m[i]);
    }
  }
  return profileAlong(Float64Array.from(places), Float64Array.from(heights));
}

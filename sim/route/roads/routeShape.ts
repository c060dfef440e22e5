import { inputError } from "../../../shared/problems.ts";
import type { Profile } from "../../trace/trace.ts";
import { climbOf } from "../clean/heights/cleanHeights.ts";
import { fitHeightNoise } from "../clean/heights/fitHeightNoise.ts";
import { smoothHeight } from "../clean/heights/smoothHeight.ts";
import { geodesicLeg } from "../log/geodesicLeg.ts";
import type { LogFile } from "../log/logFile.ts";

/** A planned route without times: how long it is and, where it has heights, its hills. */
export interface RouteShape {
  readonly distance_m: number;
  readonly profile?: Profile;
  /** Sum of its rises. */
  readonly climb_m?: number;
}

/** Length along the positions of a log on the ellipsoid, and heights along it, smoothed as those of a drive are. */
export function routeShape(log: LogFile): RouteShape {
  const { latitude_deg, longitude_deg, count } = log.fixes;
  const places: number[] = [];
  const heights: number[] = [];
  let distance_m = 0;
  let last = -1;
  for (let i = 0; i < count; i++) {
    if (Number.isNaN(latitude_deg[i])) {
      continue;
    }
    const leg_m =
      last < 0 ? 0 : geodesicLeg(latitude_deg[last], longitude_deg[last], latitude_deg[i], longitude_deg[i]).length_m;
    distance_m += leg_m;
    if ((last < 0 || leg_m > 0) && !Number.isNaN(log.fixes.elevation_m[i])) {
      places.push(distance_m);
      heights.push(log.fixes.elevation_m[i]);
    }
    last = i;
  }
  if (!(distance_m > 0)) {
    throw inputError("noDistance", log.file, "found a route that goes nowhere, wanted at least two places");
  }
  if (places.length < 2) {
    return { distance_m };
  }
  const along_m = Float64Array.from(places);
  const raw_m = Float64Array.from(heights);
  // A route has no times; the correlated noise that goes with time is told apart at a town's 10 m/s.
  const time_s = along_m.map((place_m) => place_m / 10);
  const elevation_m = smoothHeight(time_s, along_m, raw_m, fitHeightNoise(time_s, along_m, raw_m, false));
  return { distance_m, profile: { distance_m: along_m, elevation_m }, climb_m: climbOf(elevation_m) };
}

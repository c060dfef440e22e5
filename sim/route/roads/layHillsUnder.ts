import { inputError } from "../../../shared/problems.ts";
import { distanceAlong_m } from "../../trace/distanceAlong.ts";
import { elevationAt_m } from "../../trace/profileAlong.ts";
import type { Profile, Trace } from "../../trace/trace.ts";

const SPACING_m = 10;

/**
 * A trace with another road's hills under it: the profile from its start, and where the trace is longer, back and forth
 * over it, so that height never jumps. Where it is shorter, the profile's beginning. Throws `InputError` for a profile or a
 * trace that goes nowhere.
 */
export function layHillsUnder(trace: Trace, hills: Profile): Trace {
  const along_m = distanceAlong_m(trace.time_s, trace.speed_mps);
  const length_m = along_m[along_m.length - 1];
  const first_m = hills.distance_m[0];
  const road_m = hills.distance_m[hills.distance_m.length - 1] - first_m;
  if (!(length_m > 0) || !(road_m > 0)) {
    throw inputError(
      "noDistance",
      trace.id,
      `found ${length_m} m of trace and ${road_m} m of hills, wanted more than 0 m of both`,
    );
  }
  const points = Math.ceil(length_m / SPACING_m) + 1;
  const distance_m = Float64Array.from({ length: points }, (_, i) => (length_m * i) / (points - 1));
  const elevation_m = distance_m.map((place_m) => {
    const lap_m = place_m % (2 * road_m);
    return elevationAt_m(hills, first_m + (lap_m <= road_m ? lap_m : 2 * road_m - lap_m));
  });
  return { ...trace, title: `${trace.title}, with hills`, profile: { distance_m, elevation_m } };
}

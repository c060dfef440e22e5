import { geodesicLeg } from "../../log/geodesicLeg.ts";

/** Places east and north of the first one, row for row; NaN where there is none. */
export interface Plane {
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
}

/**
 * Positions laid out on a plane, east and north of the first one with a position: every leg keeps its length and
 * bearing on the ellipsoid, so that distances along the track are WGS84's, at the date line too. NaN stays NaN.
 */
export function layOut(latitude_deg: Float64Array, longitude_deg: Float64Array): Plane {
  const n = latitude_deg.length;
  const east_m = new Float64Array(n).fill(Number.NaN);
  const north_m = new Float64Array(n).fill(Number.NaN);
  let last = -1;
  for (let i = 0; i < n; i++) {
    if (Number.isNaN(latitude_deg[i])) {
      continue;
    }
    if (last < 0) {
      east_m[i] = 0;
      north_m[i] = 0;
    } else {
      const { length_m, bearing_deg } = geodesicLeg(
        latitude_deg[last],
        longitude_deg[last],
        latitude_deg[i],
        longitude_deg[i],
      );
      const bearing_rad = (bearing_deg * Math.PI) / 180;
      east_m[i] = east_m[last] + length_m * Math.sin(bearing_rad);
      north_m[i] = north_m[last] + length_m * Math.cos(bearing_rad);
    }
    last = i;
  }
  return { east_m, north_m };
}

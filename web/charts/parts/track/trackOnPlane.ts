/** A recorded track, one entry a sample, in the order driven. */
export interface Track {
  readonly time_s: Float64Array;
  readonly longitude_deg: Float64Array;
  readonly latitude_deg: Float64Array;
  readonly speed_mps: Float64Array;
  /** 1 where the cleaning changed or filled the sample. */
  readonly isRepaired?: Uint8Array;
  /** Energy from the pack about there, in Wh/km, where a pack has been driven over it. */
  readonly use_Whpkm?: Float64Array;
  /** 1 where that pack's car falls behind the wanted speed. */
  readonly isBehind?: Uint8Array;
  /** Samples that begin anew elsewhere: no line is drawn to them. The first needs no mention. */
  readonly partRows?: readonly number[];
}

export interface PlacedTrack {
  readonly east_m: Float64Array;
  readonly north_m: Float64Array;
  /** Along the track. */
  readonly length_m: number;
}

// Mean radius of the Earth (mean of the three axes of the WGS 84 ellipsoid); a picture needs no better than the sphere's 0.3 %.
const EARTH_m = 6_371_009;

/**
 * Metres east and north of the track's middle latitude and first longitude, on a plane: x = R cos(lat0) dlon, y = R dlat. For
 * pictures of a day's drive; distances for reckoning come from the geodesic, not from here. A track across the date line stays whole.
 */
export function onPlane({ longitude_deg, latitude_deg }: Pick<Track, "longitude_deg" | "latitude_deg">): PlacedTrack {
  const n = longitude_deg.length;
  const radian = Math.PI / 180;
  let south = 90;
  let north = -90;
  for (const lat of latitude_deg) {
    if (lat < south) south = lat;
    if (lat > north) north = lat;
  }
  const middle_deg = (south + north) / 2;
  const perDegree_m = EARTH_m * radian;
  const shrink = Math.cos(middle_deg * radian);
  const east_m = new Float64Array(n);
  const north_m = new Float64Array(n);
  let length_m = 0;
  for (let i = 0; i < n; i++) {
    const turn = (longitude_deg[i] as number) - (longitude_deg[0] as number);
    east_m[i] = (turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn) * perDegree_m * shrink;
    north_m[i] = ((latitude_deg[i] as number) - middle_deg) * perDegree_m;
    if (i > 0) {
      const dEast_m = (east_m[i] as number) - (east_m[i - 1] as number);
      const dNorth_m = (north_m[i] as number) - (north_m[i - 1] as number);
      length_m += Math.sqrt(dEast_m * dEast_m + dNorth_m * dNorth_m);
    }
  }
  return { east_m, north_m, length_m };
}

/** Metres from one sample of a track to another near it, on the plane at their latitude. */
export function legOnPlane_m(
  { longitude_deg, latitude_deg }: Pick<Track, "longitude_deg" | "latitude_deg">,
  from: number,
  to: number,
): number {
  const perDegree_m = (EARTH_m * Math.PI) / 180;
  const lat = latitude_deg[from] as number;
  const turn = (longitude_deg[to] as number) - (longitude_deg[from] as number);
  const dEast_m =
    (turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn) * perDegree_m * Math.cos((lat * Math.PI) / 180);
  const dNorth_m = ((latitude_deg[to] as number) - lat) * perDegree_m;
  return Math.sqrt(dEast_m * dEast_m + dNorth_m * dNorth_m);
}

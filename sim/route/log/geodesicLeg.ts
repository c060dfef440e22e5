import geodesic from "geographiclib-geodesic";

const wgs84 = geodesic.Geodesic.WGS84;

/** The shortest line between two positions on the WGS84 ellipsoid: its length, and its bearing at the start. */
interface Leg {
  readonly length_m: number;
  readonly bearing_deg: number;
}

/** Length and bearing from one position to another [Karney2013]; both in degrees, the date line and poles included. */
export function geodesicLeg(fromLat_deg: number, fromLon_deg: number, toLat_deg: number, toLon_deg: number): Leg {
  const line = wgs84.Inverse(fromLat_deg, fromLon_deg, toLat_deg, toLon_deg);
  return { length_m: line.s12 ?? 0, bearing_deg: line.azi1 ?? 0 };
}

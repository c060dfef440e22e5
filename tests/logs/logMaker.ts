import { randomNormal, randomUniform } from "d3-random";
import geodesic from "geographiclib-geodesic";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A drive that is known exactly: one row a second, speed linear between rows, positions on the ellipsoid. */
export interface Truth {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly distance_m: Float64Array;
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;
  readonly elevation_m: Float64Array;
}

/** How a receiver spoils it. Undefined leaves a fault or a column out. */
export interface Spoiling {
  readonly seed: number;
  readonly sampling_s: number;
  /** Standard deviation per axis, first-order correlated over 20 s. */
  readonly position_m: number;
  readonly white_m: number;
  readonly speed_mps?: number | undefined;
  /** Standard deviation of height, first-order correlated over 60 s. */
  readonly elevation_m?: number | undefined;
  readonly hasMultipath: boolean;
  readonly hasDropouts: boolean;
}

export interface LogRow {
  readonly time_s: number;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly speed_mps: number;
  readonly elevation_m: number;
}

/** An ordinary receiver under the open sky: a fix a second with speed and height, no jumps and no gaps. */
export const openSky: Omit<Spoiling, "seed"> = {
  sampling_s: 1,
  position_m: 3,
  white_m: 0.5,
  speed_mps: 0.15,
  elevation_m: 3,
  hasMultipath: false,
  hasDropouts: false,
};
/** The same receiver driven past houses and under bridges. */
export const amongHouses: Omit<Spoiling, "seed"> = { ...openSky, hasMultipath: true, hasDropouts: true };

const POSITION_CORRELATION_s = 20;
const HEIGHT_CORRELATION_s = 60;

/** Draws from 0 to 1 that come out the same for the same seed, as d3-random wants them. */
export function seeded(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}

/**
 * A drive along an invented road at the speeds given: straight pieces, bends taken with 0.4 m/s2 sideways rms (2 at most), and
 * now and then a turn of 90 degrees after a stop. `height` gives the road's height at a distance.
 */
export function makeTruth(
  speed_mps: ArrayLike<number>,
  seed: number,
  height: (distance_m: number) => number = () => 0,
  start: readonly [number, number] = [52.1, 8.4],
): Truth {
  const uniform = seeded(seed);
  const normal = randomNormal.source(uniform)(0, 1);
  const n = speed_mps.length;
  const truth: Truth = {
    time_s: Float64Array.from({ length: n }, (_, i) => i),
    speed_mps: Float64Array.from(speed_mps),
    distance_m: new Float64Array(n),
    latitude_deg: new Float64Array(n).fill(start[0]),
    longitude_deg: new Float64Array(n).fill(start[1]),
    elevation_m: new Float64Array(n).fill(height(0)),
  };
  let heading_rad = 2 * Math.PI * uniform();
  let sideways_mps2 = 0;
  let turnLeft_rad = 0;
  const PARTS = 10;
  for (let i = 1; i < n; i++) {
    let [latitude_deg, longitude_deg] = [truth.latitude_deg[i - 1], truth.longitude_deg[i - 1]];
    if (truth.speed_mps[i - 1] === 0 && truth.speed_mps[i] > 0 && uniform() < 0.4) {
      turnLeft_rad = (uniform() < 0.5 ? -1 : 1) * (Math.PI / 2);
    }
    sideways_mps2 += -sideways_mps2 / 8 + 0.2 * normal();
    sideways_mps2 = Math.max(-2, Math.min(2, sideways_mps2));
    for (let part = 0; part < PARTS; part++) {
      const share = (part + 0.5) / PARTS;
      const v = truth.speed_mps[i - 1] * (1 - share) + truth.speed_mps[i] * share;
      const step_m = v / PARTS;
      let bend_rad = v > 4 ? ((sideways_mps2 / v) * 1) / PARTS : 0;
      if (turnLeft_rad !== 0) {
        bend_rad = Math.sign(turnLeft_rad) * Math.min(Math.abs(turnLeft_rad), step_m / 10); // 10 m radius
        turnLeft_rad -= bend_rad;
      }
      heading_rad += bend_rad;
      [latitude_deg, longitude_deg] = moved(
        latitude_deg,
        longitude_deg,
        step_m * Math.cos(heading_rad),
        step_m * Math.sin(heading_rad),
      );
    }
    truth.latitude_deg[i] = latitude_deg;
    truth.longitude_deg[i] = longitude_deg;
    truth.distance_m[i] = truth.distance_m[i - 1] + 0.5 * (truth.speed_mps[i - 1] + truth.speed_mps[i]);
    truth.elevation_m[i] = height(truth.distance_m[i]);
  }
  return truth;
}

/** The speeds of a drive with a stand of the length given put in at the stop nearest to its middle. */
export function withParking(speed_mps: ArrayLike<number>, parked_s: number): number[] {
  const speeds = Array.from(speed_mps);
  const middle = Math.floor(speeds.length / 2);
  let best = 0;
  for (let i = 0; i < speeds.length; i++) {
    if (speeds[i] === 0 && Math.abs(i - middle) < Math.abs(best - middle)) {
      best = i;
    }
  }
  speeds.splice(best, 0, ...new Array<number>(parked_s).fill(0));
  return speeds;
}

/** What a receiver would have logged: the drive with noise, jumps and gaps. Starts at `start_s`. */
export function makeLog(truth: Truth, spoiling: Spoiling, start_s = 1714723200): LogRow[] {
  const uniform = seeded(spoiling.seed);
  const normal = randomNormal.source(uniform)(0, 1);
  const between = (least: number, most: number) => randomUniform.source(uniform)(least, most)();
  const duration_s = truth.time_s[truth.time_s.length - 1];
  const steps = spoiling.hasMultipath ? happenings(300, duration_s, () => between(5, 20), between) : [];
  const jumps = steps.map(() => ({ size_m: between(15, 40), bearing_rad: between(0, 2 * Math.PI) }));
  const dropouts = spoiling.hasDropouts ? happenings(600, duration_s, () => between(10, 60), between) : [];

  const keep = Math.exp(-spoiling.sampling_s / POSITION_CORRELATION_s);
  const keepHeight = Math.exp(-spoiling.sampling_s / HEIGHT_CORRELATION_s);
  let north_m = spoiling.position_m * normal();
  let east_m = spoiling.position_m * normal();
  let up_m = (spoiling.elevation_m ?? 0) * normal();
  const rows: LogRow[] = [];
  for (let time_s = 0; time_s <= duration_s; time_s += spoiling.sampling_s) {
    north_m = keep * north_m + spoiling.position_m * Math.sqrt(1 - keep * keep) * normal();
    east_m = keep * east_m + spoiling.position_m * Math.sqrt(1 - keep * keep) * normal();
    up_m = keepHeight * up_m + (spoiling.elevation_m ?? 0) * Math.sqrt(1 - keepHeight * keepHeight) * normal();
    let dNorth_m = north_m + spoiling.white_m * normal();
    let dEast_m = east_m + spoiling.white_m * normal();
    const step = steps.findIndex(([from_s, to_s]) => time_s >= from_s && time_s < to_s);
    if (step >= 0) {
      dNorth_m += jumps[step].size_m * Math.cos(jumps[step].bearing_rad);
      dEast_m += jumps[step].size_m * Math.sin(jumps[step].bearing_rad);
    }
    const speedNoise_mps = normal() * (spoiling.speed_mps ?? 0);
    if (dropouts.some(([from_s, to_s]) => time_s >= from_s && time_s < to_s)) {
      continue;
    }
    const [latitude_deg, longitude_deg] = moved(
      at(truth, truth.latitude_deg, time_s),
      at(truth, truth.longitude_deg, time_s),
      dNorth_m,
      dEast_m,
    );
    const hasSpeed = spoiling.speed_mps !== undefined;
    rows.push({
      time_s: start_s + time_s,
      latitude_deg,
      longitude_deg,
      speed_mps: hasSpeed ? Math.max(0, at(truth, truth.speed_mps, time_s) + speedNoise_mps) : Number.NaN,
      elevation_m: spoiling.elevation_m === undefined ? Number.NaN : at(truth, truth.elevation_m, time_s) + up_m,
    });
  }
  return rows;
}

/** Pieces of the length drawn, one in each period, somewhere inside it. */
function happenings(
  period_s: number,
  duration_s: number,
  length_s: () => number,
  between: (least: number, most: number) => number,
): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  for (let from_s = 0; from_s < duration_s; from_s += period_s) {
    const long_s = length_s();
    const start_s = from_s + between(0.1 * period_s, 0.9 * period_s - long_s);
    if (start_s + long_s < duration_s) {
      found.push([start_s, start_s + long_s]);
    }
  }
  return found;
}

function at(truth: Truth, column: Float64Array, time_s: number): number {
  const i = Math.min(truth.time_s.length - 2, Math.floor(time_s));
  const share = time_s - i;
  return column[i] * (1 - share) + column[i + 1] * share;
}

/** A short step north and east, by the radii of the ellipsoid at this latitude: exact to a part in a million for metres. */
function moved(latitude_deg: number, longitude_deg: number, north_m: number, east_m: number): [number, number] {
  const { a, f } = geodesic.Geodesic.WGS84;
  const e2 = f * (2 - f);
  const latitude_rad = (latitude_deg * Math.PI) / 180;
  const w2 = 1 - e2 * Math.sin(latitude_rad) ** 2;
  const meridian_m = (a * (1 - e2)) / w2 ** 1.5;
  const normal_m = a / Math.sqrt(w2);
  return [
    latitude_deg + ((north_m / meridian_m) * 180) / Math.PI,
    longitude_deg + ((east_m / (normal_m * Math.cos(latitude_rad))) * 180) / Math.PI,
  ];
}

import geodesic from "geographiclib-geodesic";
import { type Draws, drawsOf } from "../support/draws.ts";
import type { LogRow, Truth } from "./logMaker.ts";

// A second maker of logs, that shares nothing with the first but the form of its rows: here the road comes first, as
// curvature along distance, and the speed follows from its bends, corners and stops; the plane and the times of the faults
// are made otherwise too. What the cleaning does well on one maker's logs only, it does not do well.

export type Country = "town" | "hills";

export interface WindingSpoiling {
  readonly seed: number;
  /** Standard deviation per axis, first-order correlated over 20 s; 0.5 m of white noise comes on top. */
  readonly position_m: number;
  /** Standard deviation of the recorded speed; undefined leaves the column out. */
  readonly speed_mps: number | undefined;
  /** Standard deviation, first-order correlated over 60 s. */
  readonly elevation_m: number;
}

/** One piece of road: curvature goes up to that of `radius_m` over the first third and back over the last. */
interface RoadPiece {
  readonly long_m: number;
  /** Positive to the right, endless where straight. */
  readonly radius_m: number;
  readonly limit_mps: number;
  /** Whether the car stops where it begins, and how long. */
  readonly stop_s: number;
}

const STEP_s = 0.1;
const PARKED_s = 300;
const SIDEWAYS_mps2 = 2;

/** A drive of about `duration_s` with five minutes parked in its middle, known exactly at a row a second. */
export function windingDrive(country: Country, seed: number, duration_s = 2400): Truth {
  const draw = drawsOf(seed);
  const columns: Record<"speed_mps" | "distance_m" | "latitude_deg" | "longitude_deg" | "elevation_m", number[]> = {
    speed_mps: [],
    distance_m: [],
    latitude_deg: [],
    longitude_deg: [],
    elevation_m: [],
  };
  const pieces = Array.from({ length: 1500 }, (_, i) => pieceOf(country, draw, i));
  const starts_m: number[] = [];
  pieces.reduce((sum, { long_m }, i) => {
    starts_m[i] = sum;
    return sum + long_m;
  }, 0);
  const waves = [0, 1, 2].map((k) => ({ long_m: 900 * 2.7 ** k * draw.between(0.8, 1.2), phase: draw.between(0, 6) }));
  const elevation_m = (at_m: number) =>
    waves.reduce(
      (sum, { long_m, phase }) => sum + 0.004 * long_m * Math.sin((2 * Math.PI * at_m) / long_m + phase),
      120,
    );
  const start = { latitude_deg: draw.between(-45, 62), longitude_deg: draw.between(-100, 140) };

  let [at_m, speed_mps, heading_rad, north_m, east_m] = [0, 0, draw.between(0, 6.28), 0, 0];
  let [piece, waiting_s, foot_mps2] = [0, 8, 0];
  let hasParked = false;
  const isParkable = (i: number) => (pieces[i]?.stop_s ?? 0) > 0;
  for (let k = 0; k * STEP_s < duration_s + PARKED_s; k++) {
    if (k % 10 === 0) {
      const far_m = Math.hypot(north_m, east_m);
      const bearing_deg = (Math.atan2(east_m, north_m) * 180) / Math.PI;
      const { lat2, lon2 } = geodesic.Geodesic.WGS84.Direct(
        start.latitude_deg,
        start.longitude_deg,
        bearing_deg,
        far_m,
      );
      columns.latitude_deg.push(lat2 ?? Number.NaN);
      columns.longitude_deg.push(lon2 ?? Number.NaN);
      columns.speed_mps.push(speed_mps);
      columns.distance_m.push(at_m);
      columns.elevation_m.push(elevation_m(at_m));
    }
    if (waiting_s > 0) {
      waiting_s -= STEP_s;
      continue;
    }
    // A foot is never still: 0.25 m/s2 that wander over 3 s. The driver brakes in time for what is slower ahead.
    foot_mps2 += -foot_mps2 * (STEP_s / 3) + 0.25 * Math.sqrt((2 * STEP_s) / 3) * draw.normal();
    let aim_mps = 0.97 * (pieces[piece]?.limit_mps ?? 0);
    for (let next = piece + 1; next < piece + 8; next++) {
      const away_m = Math.max(0, (starts_m[next] ?? 0) - at_m - 1);
      if (away_m > 350) break;
      const end_mps = isParkable(next) ? 0 : (pieces[next]?.limit_mps ?? 0);
      aim_mps = Math.min(aim_mps, Math.sqrt(end_mps * end_mps + 2 * 1.4 * away_m));
    }
    const push_mps2 = Math.max(-2.6, Math.min(1.9 - 0.035 * speed_mps, (aim_mps - speed_mps) / 0.8 + foot_mps2));
    let next_mps = Math.max(0, speed_mps + push_mps2 * STEP_s);
    const stopAt_m = isParkable(piece + 1) ? (starts_m[piece + 1] ?? 0) : Number.POSITIVE_INFINITY;
    if (stopAt_m - at_m < 1.5 && next_mps < 0.6) {
      next_mps = 0;
      piece += 1;
      waiting_s = pieces[piece]?.stop_s ?? 0;
      if (!hasParked && k * STEP_s > duration_s / 2) {
        waiting_s = PARKED_s;
        hasParked = true;
      }
    } else if (next_mps < 0.3 && speed_mps < 0.3) next_mps = 0.3; // creeps up to the line
    const moved_m = 0.5 * (speed_mps + next_mps) * STEP_s;
    const turn_rad = curvatureAt(pieces[piece], at_m - (starts_m[piece] ?? 0)) * moved_m;
    north_m += moved_m * Math.cos(heading_rad + turn_rad / 2);
    east_m += moved_m * Math.sin(heading_rad + turn_rad / 2);
    heading_rad += turn_rad;
    at_m += moved_m;
    speed_mps = next_mps;
    while (!isParkable(piece + 1) && at_m >= (starts_m[piece + 1] ?? 0)) piece += 1;
  }
  const column = (name: keyof typeof columns) => Float64Array.from(columns[name]);
  return {
    time_s: Float64Array.from(columns.speed_mps, (_, i) => i),
    speed_mps: column("speed_mps"),
    distance_m: column("distance_m"),
    latitude_deg: column("latitude_deg"),
    longitude_deg: column("longitude_deg"),
    elevation_m: column("elevation_m"),
  };
}

/** What a receiver makes of a drive, at a row a second: its faults come at random and not in turn. */
export function windingLog(truth: Truth, spoiling: WindingSpoiling, start_s = 1_700_000_000): LogRow[] {
  const draw = drawsOf(spoiling.seed + 77_000);
  const last_s = truth.time_s.length - 1;
  const jumps = faults(draw, 300, last_s, 5, 20).map((each) => ({
    ...each,
    far_m: draw.between(15, 40),
    bearing_rad: draw.between(0, 2 * Math.PI),
  }));
  const silences = faults(draw, 600, last_s, 10, 60);
  const keep = Math.exp(-1 / 20);
  const keepUp = Math.exp(-1 / 60);
  const drift = [spoiling.position_m * draw.normal(), spoiling.position_m * draw.normal()];
  let up_m = spoiling.elevation_m * draw.normal();
  const rows: LogRow[] = [];
  for (let i = 0; i <= last_s; i++) {
    for (const axis of [0, 1])
      drift[axis] = keep * (drift[axis] ?? 0) + spoiling.position_m * Math.sqrt(1 - keep * keep) * draw.normal();
    up_m = keepUp * up_m + spoiling.elevation_m * Math.sqrt(1 - keepUp * keepUp) * draw.normal();
    let [north_m, east_m] = drift.map((each) => each + 0.5 * draw.normal()) as [number, number];
    for (const { from_s, to_s, far_m, bearing_rad } of jumps) {
      if (i < from_s || i >= to_s) continue;
      north_m += far_m * Math.cos(bearing_rad);
      east_m += far_m * Math.sin(bearing_rad);
    }
    const speed_mps =
      spoiling.speed_mps === undefined ? Number.NaN : truth.speed_mps[i] + spoiling.speed_mps * draw.normal();
    if (silences.some(({ from_s, to_s }) => i >= from_s && i < to_s)) continue;
    const bearing_deg = (Math.atan2(east_m, north_m) * 180) / Math.PI;
    const [lat, lon] = [truth.latitude_deg[i], truth.longitude_deg[i]];
    const { lat2, lon2 } = geodesic.Geodesic.WGS84.Direct(lat, lon, bearing_deg, Math.hypot(north_m, east_m));
    rows.push({
      time_s: start_s + i,
      latitude_deg: lat2 ?? Number.NaN,
      longitude_deg: lon2 ?? Number.NaN,
      speed_mps: Math.max(0, speed_mps),
      elevation_m: truth.elevation_m[i] + up_m,
    });
  }
  return rows;
}

function pieceOf(country: Country, draw: Draws, i: number): RoadPiece {
  const side = draw.between(0, 1) < 0.5 ? -1 : 1;
  if (country === "town") {
    // A block, its junction, and one time in two a corner of 9 m there; one junction in two stops the car.
    const stop_s = draw.between(0, 1) < 0.5 ? draw.between(3, 45) : 0;
    if (i % 2 === 1)
      return {
        long_m: draw.between(70, 420),
        radius_m: Number.POSITIVE_INFINITY,
        limit_mps: draw.between(8, 15),
        stop_s: 0,
      };
    if (draw.between(0, 1) < 0.5) return { long_m: 10, radius_m: Number.POSITIVE_INFINITY, limit_mps: 14, stop_s };
    return { long_m: (1.5 * 9 * Math.PI) / 2, radius_m: side * 9, limit_mps: Math.sqrt(SIDEWAYS_mps2 * 9), stop_s };
  }
  const stop_s = i > 0 && draw.between(0, 1) < 0.04 ? draw.between(4, 30) : 0;
  if (i % 3 === 2)
    return {
      long_m: draw.between(30, 500),
      radius_m: Number.POSITIVE_INFINITY,
      limit_mps: draw.between(17, 28),
      stop_s,
    };
  // Bends of 25 to 400 m taken at up to 2 m/s2 sideways, turning 15 to 120 degrees; S-bends follow one another.
  const radius_m = 25 * 16 ** draw.between(0, 1);
  const turn_rad = draw.between(0.26, 2.1) * Math.min(1, 80 / radius_m + 0.2);
  const limit_mps = Math.min(25, Math.sqrt(draw.between(1, SIDEWAYS_mps2) * radius_m));
  return { long_m: 1.5 * radius_m * turn_rad, radius_m: side * radius_m, limit_mps, stop_s };
}

function curvatureAt(piece: RoadPiece | undefined, along_m: number): number {
  if (!piece) return 0;
  const third_m = piece.long_m / 3;
  return (1 / piece.radius_m) * Math.max(0, Math.min(1, along_m / third_m, (piece.long_m - along_m) / third_m));
}

/** Faults that come on the mean every `mean_s`, at random, and last `least_s` to `most_s`. */
function faults(draw: Draws, mean_s: number, last_s: number, least_s: number, most_s: number) {
  const found: { from_s: number; to_s: number }[] = [];
  for (let at_s = 0; ; ) {
    at_s += -mean_s * Math.log(1 - draw.between(0, 1));
    const long_s = draw.between(least_s, most_s);
    if (at_s + long_s > last_s) return found;
    found.push({ from_s: at_s, to_s: at_s + long_s });
    at_s += long_s;
  }
}

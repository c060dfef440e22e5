import { type Draws, drawsOf } from "../support/draws.ts";
import type { Truth } from "./logMaker.ts";

// The third kind of truth, written without a look at the cleaning: the driver follows other cars (the intelligent driver
// model) and stops at lights that turn by their own clock; the road's bends and heights are sums of waves by a spectrum.

/** A piece of the drive with its own traffic. */
interface Zone {
  readonly long_m: number;
  readonly limit_mps: number;
  /** Lights stand this far apart, about. */
  readonly lights_m: number;
  /** How uneven the traffic ahead runs: standard deviation of the leader's speed as a share of the limit. */
  readonly unrest_frac: number;
  readonly isCity: boolean;
}

const zonesOf: Record<TrafficDrive, readonly Zone[]> = {
  city: [{ long_m: 1e6, limit_mps: 50 / 3.6, lights_m: 230, unrest_frac: 0.16, isCity: true }],
  mixed: [
    { long_m: 4000, limit_mps: 50 / 3.6, lights_m: 260, unrest_frac: 0.16, isCity: true },
    { long_m: 9000, limit_mps: 90 / 3.6, lights_m: 2500, unrest_frac: 0.09, isCity: false },
    { long_m: 12000, limit_mps: 118 / 3.6, lights_m: 1e6, unrest_frac: 0.06, isCity: false },
    { long_m: 3000, limit_mps: 70 / 3.6, lights_m: 900, unrest_frac: 0.13, isCity: false },
    { long_m: 1e6, limit_mps: 50 / 3.6, lights_m: 230, unrest_frac: 0.16, isCity: true },
  ],
};

export type TrafficDrive = "city" | "mixed";

export interface TrafficTruth extends Truth {
  /** Direction of travel, clockwise from north, and whether the street stands between houses. */
  readonly heading_rad: Float64Array;
  readonly isCity: readonly boolean[];
}

const STEP_s = 0.1;

/**
 * A drive through traffic, a row a second. The follower's law is a = A (1 - (v/v0)^4 - (s'/s)^2) with
 * s' = 2 m + 1.2 s v + v dv / (2 sqrt(A B)), A = 1.6 m/s2, B = 1.8 m/s2 (the intelligent driver model of Treiber, Hennecke and
 * Helbing 2000; its constants from memory). A red light is a car at rest at its line.
 */
export function trafficDrive(kind: TrafficDrive, seed: number, duration_s = 2400): TrafficTruth {
  const draw = drawsOf(seed * 7919 + 13);
  const zones = zonesOf[kind];
  const bends = wavesOf(draw, 40, 60, 3000, 0.5);
  const hills = wavesOf(draw, 30, 400, 12000, 1);
  const rows = { speed: [0], far: [0], north: [0], east: [0], up: [0], heading: [0], isCity: [true] };
  const lights = lightsAlong(zones, draw);
  let heading0_rad = draw.between(0, 2 * Math.PI);
  let [at_m, v_mps, north_m, east_m, leader_mps, gap_m] = [0, 0, 0, 0, 8, 30];
  let [foot_mps2, next, nextTurn_m, turnLeft_rad] = [0, 0, draw.between(200, 700), 0];
  const elevation_m = (s: number) => 80 + sum(hills, s) * 0.009;
  rows.up[0] = elevation_m(0);
  for (let k = 1; k <= duration_s / STEP_s; k++) {
    const now_s = k * STEP_s;
    const zone = zoneAt(zones, at_m);
    while (lights[next] && lights[next].at_m < at_m) next++;
    // The leader's speed wanders about the limit over 12 s and never goes backwards.
    leader_mps += (STEP_s / 12) * (0.92 * zone.limit_mps - leader_mps);
    leader_mps += zone.unrest_frac * zone.limit_mps * Math.sqrt((2 * STEP_s) / 12) * draw.normal();
    leader_mps = Math.max(0, Math.min(1.15 * zone.limit_mps, leader_mps));
    gap_m = Math.max(1, Math.min(120, gap_m + (leader_mps - v_mps) * STEP_s));
    foot_mps2 += -foot_mps2 * (STEP_s / 2) + 0.18 * Math.sqrt((2 * STEP_s) / 2) * draw.normal();
    let push_mps2 = followed_mps2(v_mps, zone.limit_mps, gap_m, leader_mps);
    const light = lights[next];
    if (light && isRed(light, now_s)) {
      const away_m = Math.max(0.3, light.at_m - at_m);
      if (v_mps * v_mps < 2 * 4 * away_m) {
        push_mps2 = Math.min(push_mps2, followed_mps2(v_mps, zone.limit_mps, away_m + 1.5, 0));
        gap_m = Math.max(gap_m, 12);
      }
    }
    if (turnLeft_rad !== 0) push_mps2 = Math.min(push_mps2, (5.5 - v_mps) / 1.5);
    if (v_mps > 0.5) push_mps2 += foot_mps2;
    let to_mps = Math.max(0, v_mps + Math.max(-5, push_mps2) * STEP_s);
    if (v_mps === 0 && to_mps < 0.03) to_mps = 0;
    if (v_mps < 0.4 && push_mps2 < 0) to_mps = 0;
    const step_m = 0.5 * (v_mps + to_mps) * STEP_s;
    const before_rad = heading0_rad + sum(bends, at_m) * 0.03;
    at_m += step_m;
    if (zone.isCity && at_m > nextTurn_m) {
      turnLeft_rad = (draw.between(0, 1) < 0.5 ? -1 : 1) * draw.between(1.2, 1.8);
      nextTurn_m = at_m + draw.between(250, 1200);
    }
    const turn_rad = Math.sign(turnLeft_rad) * Math.min(Math.abs(turnLeft_rad), step_m / 11);
    turnLeft_rad -= turn_rad;
    heading0_rad += turn_rad;
    const heading_rad = 0.5 * (before_rad + heading0_rad + sum(bends, at_m) * 0.03);
    north_m += step_m * Math.cos(heading_rad);
    east_m += step_m * Math.sin(heading_rad);
    v_mps = to_mps;
    if (k % 10 === 0) {
      rows.speed.push(v_mps);
      rows.far.push(at_m);
      rows.north.push(north_m);
      rows.east.push(east_m);
      rows.up.push(elevation_m(at_m));
      rows.heading.push(heading_rad);
      rows.isCity.push(zone.isCity);
    }
  }
  const start = { latitude_deg: draw.between(-40, 60), longitude_deg: draw.between(-120, 150) };
  const places = placedOn(start, rows.north, rows.east);
  return {
    time_s: Float64Array.from(rows.speed, (_, i) => i),
    speed_mps: Float64Array.from(rows.speed),
    distance_m: Float64Array.from(rows.far),
    ...places,
    elevation_m: Float64Array.from(rows.up),
    heading_rad: Float64Array.from(rows.heading),
    isCity: rows.isCity,
  };
}

function followed_mps2(v_mps: number, limit_mps: number, gap_m: number, leader_mps: number): number {
  const wanted_m = 2 + Math.max(0, 1.2 * v_mps + (v_mps * (v_mps - leader_mps)) / (2 * Math.sqrt(1.6 * 1.8)));
  return 1.6 * (1 - (v_mps / limit_mps) ** 4 - (wanted_m / gap_m) ** 2);
}

interface Light {
  readonly at_m: number;
  readonly cycle_s: number;
  readonly red_s: number;
  readonly phase_s: number;
}

function isRed(light: Light, now_s: number): boolean {
  return (now_s + light.phase_s) % light.cycle_s < light.red_s;
}

function lightsAlong(zones: readonly Zone[], draw: Draws): Light[] {
  const lights: Light[] = [];
  for (let at_m = 150; at_m < 1.2e5; ) {
    const zone = zoneAt(zones, at_m);
    const cycle_s = draw.between(50, 100);
    lights.push({ at_m, cycle_s, red_s: cycle_s * draw.between(0.3, 0.55), phase_s: draw.between(0, 100) });
    at_m += zone.lights_m > 1e5 ? zone.long_m : zone.lights_m * draw.between(0.4, 1.6);
  }
  return lights;
}

function zoneAt(zones: readonly Zone[], at_m: number): Zone {
  let from_m = 0;
  for (const zone of zones) {
    if (at_m < from_m + zone.long_m) return zone;
    from_m += zone.long_m;
  }
  return zones[zones.length - 1] as Zone;
}

interface Wave {
  readonly long_m: number;
  readonly size: number;
  readonly phase_rad: number;
}

/** Waves of lengths spread evenly on a log scale, as large as their length to the power given, with phases by chance. */
function wavesOf(draw: Draws, count: number, least_m: number, most_m: number, power: number): Wave[] {
  return Array.from({ length: count }, (_, i) => {
    const long_m = least_m * (most_m / least_m) ** ((i + draw.between(0, 1)) / count);
    return {
      long_m,
      size: (long_m ** power * Math.abs(draw.normal())) / Math.sqrt(count),
      phase_rad: draw.between(0, 6.3),
    };
  });
}

function sum(waves: readonly Wave[], at_m: number): number {
  let total = 0;
  for (const { long_m, size, phase_rad } of waves) total += size * Math.sin((2 * Math.PI * at_m) / long_m + phase_rad);
  return total;
}

/** Latitudes and longitudes of a plane's points, by the radii of the WGS84 ellipsoid at each row's own latitude. */
export function placedOn(
  start: { readonly latitude_deg: number; readonly longitude_deg: number },
  north_m: ArrayLike<number>,
  east_m: ArrayLike<number>,
): { latitude_deg: Float64Array; longitude_deg: Float64Array } {
  const n = north_m.length;
  const latitude_deg = new Float64Array(n).fill(start.latitude_deg);
  const longitude_deg = new Float64Array(n).fill(start.longitude_deg);
  for (let i = 1; i < n; i++) {
    const { north, east } = radiiAt_m(latitude_deg[i - 1]);
    latitude_deg[i] = latitude_deg[i - 1] + (((north_m[i] - north_m[i - 1]) / north) * 180) / Math.PI;
    longitude_deg[i] = longitude_deg[i - 1] + (((east_m[i] - east_m[i - 1]) / east) * 180) / Math.PI;
  }
  return { latitude_deg, longitude_deg };
}

/** Radius of the meridian and of the parallel, WGS84: a = 6378137 m, e2 = 0.00669437999014. */
export function radiiAt_m(latitude_deg: number): { north: number; east: number } {
  const e2 = 0.00669437999014;
  const sin = Math.sin((latitude_deg * Math.PI) / 180);
  const w2 = 1 - e2 * sin * sin;
  return { north: (6378137 * (1 - e2)) / w2 ** 1.5, east: (6378137 / Math.sqrt(w2)) * Math.sqrt(1 - sin * sin) };
}

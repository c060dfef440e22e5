import { inputError } from "../../../shared/problems.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { Profile, Trace } from "../../trace/trace.ts";
import type { TypedLeg } from "./readTypedRoad.ts";

/** How the car is taken to be driven. All assumed: the usual values are those of calm driving in the standard cycles. */
export interface TypedDriving {
  readonly acceleration_mps2: number;
  readonly braking_mps2: number;
  readonly stand_s: number;
}
export const calmDriving: TypedDriving = { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 };

/**
 * A trace of the legs: from rest to rest, steady speed in each, even acceleration and braking, stops spread evenly over
 * their leg. Its distance is exactly that of the legs. Where a leg is too short for its speed the car goes as fast as it
 * can get there. Hills are even over their leg. Corners of the speed are rows of their own, and no two rows lie more than 1 s apart.
 */
export function typedRoad(
  legs: readonly TypedLeg[],
  driving: TypedDriving = calmDriving,
  id = "typed",
  title = "typed from memory",
): Trace {
  const { acceleration_mps2: up, braking_mps2: down } = driving;
  if (!(up > 0.05 && up <= 5 && down > 0.05 && down <= 9 && driving.stand_s >= 0 && driving.stand_s <= 3600)) {
    throw inputError(
      "badDriving",
      id,
      `found ${up} and ${down} m/s2 and ${driving.stand_s} s, allowed are 0.05 to 5, 0.05 to 9 and 0 to 3600`,
    );
  }
  const hops = hopsOf(legs);
  const ends = endSpeeds(hops, up, down);
  const rows = new RowWriter();
  hops.forEach((hop, i) => {
    const [from_mps, to_mps] = [ends[i], ends[i + 1]];
    const reach = (2 * up * down * hop.distance_m + down * from_mps ** 2 + up * to_mps ** 2) / (up + down);
    const top_mps = Math.min(hop.speed_mps, Math.sqrt(reach));
    const rampUp_m = (top_mps ** 2 - from_mps ** 2) / (2 * up);
    const rampDown_m = (top_mps ** 2 - to_mps ** 2) / (2 * down);
    rows.to(top_mps, (top_mps - from_mps) / up);
    rows.to(top_mps, Math.max(0, hop.distance_m - rampUp_m - rampDown_m) / top_mps);
    rows.to(to_mps, (top_mps - to_mps) / down);
    if (hop.stops && i + 1 < hops.length) {
      rows.to(0, driving.stand_s);
    }
  });
  const profile = profileOf(legs);
  const trace = rows.trace(id, title);
  return profile ? { ...trace, profile } : trace;
}

/** Heights at the ends of the legs, the lowest of them 0 m; nothing for a road on which no hill was typed. */
function profileOf(legs: readonly TypedLeg[]): Profile | undefined {
  if (legs.every(({ gradient_ratio = 0 }) => gradient_ratio === 0)) return undefined;
  const distance_m = [0];
  const elevation_m = [0];
  legs.forEach((leg, i) => {
    const slope_ratio = leg.gradient_ratio ?? 0;
    distance_m.push(distance_m[i] + leg.distance_m);
    // rise over run is the tangent of the slope, the leg's length lies along it
    elevation_m.push(elevation_m[i] + (leg.distance_m * slope_ratio) / Math.hypot(1, slope_ratio));
  });
  const lowest_m = Math.min(...elevation_m);
  return {
    distance_m: Float64Array.from(distance_m),
    elevation_m: Float64Array.from(elevation_m, (each_m) => each_m - lowest_m),
  };
}

interface Hop {
  readonly distance_m: number;
  readonly speed_mps: number;
  readonly stops: boolean;
}

function hopsOf(legs: readonly TypedLeg[]): readonly Hop[] {
  return legs.flatMap((leg, i) => {
    const stops = Math.round(leg.stopsPerKm * (leg.distance_m / M_PER_KM));
    const pieces = stops + 1;
    const isLast = i === legs.length - 1;
    return Array.from({ length: pieces }, (_, k) => ({
      distance_m: leg.distance_m / pieces,
      speed_mps: leg.speed_mps,
      stops: k < pieces - 1 || isLast,
    }));
  });
}

/** Speeds at the ends of the hops: 0 at stops, the slower of both legs in between, and never more than can be reached. */
function endSpeeds(hops: readonly Hop[], up: number, down: number): Float64Array {
  const n = hops.length;
  const ends = new Float64Array(n + 1);
  for (let i = 1; i < n; i++) {
    ends[i] = hops[i - 1].stops ? 0 : Math.min(hops[i - 1].speed_mps, hops[i].speed_mps);
  }
  for (let i = 1; i <= n; i++) {
    ends[i] = Math.min(ends[i], Math.sqrt(ends[i - 1] ** 2 + 2 * up * hops[i - 1].distance_m));
  }
  for (let i = n - 1; i >= 0; i--) {
    ends[i] = Math.min(ends[i], Math.sqrt(ends[i + 1] ** 2 + 2 * down * hops[i].distance_m));
  }
  return ends;
}

/** Rows of a trace written corner by corner, with rows in between where two corners lie more than 1 s apart. */
class RowWriter {
  private readonly time_s: number[] = [0];
  private readonly speed_mps: number[] = [0];

  /** Changes evenly to a speed over a time; nothing where the time is none. */
  to(speed_mps: number, over_s: number): void {
    if (!(over_s > 1e-9)) {
      return;
    }
    const last = this.time_s.length - 1;
    const [from_s, from_mps] = [this.time_s[last], this.speed_mps[last]];
    const steps = Math.ceil(over_s - 1e-9);
    for (let k = 1; k <= steps; k++) {
      this.time_s.push(from_s + (over_s * k) / steps);
      this.speed_mps.push(k === steps ? speed_mps : from_mps + ((speed_mps - from_mps) * k) / steps);
    }
  }

  trace(id: string, title: string): Trace {
    return { id, title, time_s: Float64Array.from(this.time_s), speed_mps: Float64Array.from(this.speed_mps) };
  }
}

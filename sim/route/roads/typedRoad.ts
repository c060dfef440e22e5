import { InputError, inputError, type Problem } from "../../../shared/problems.ts";
import { M_PER_KM, M_PER_MILE, MPS_PER_KMH, MPS_PER_MPH } from "../../../shared/units.ts";
import type { Trace } from "../../trace/trace.ts";

/** One piece of a road told from memory. */
export interface TypedLeg {
  readonly distance_m: number;
  readonly speed_mps: number;
  readonly stopsPerKm: number;
}

/** How the car is taken to be driven. All assumed: the usual values are those of calm driving in the standard cycles. */
export interface TypedDriving {
  readonly acceleration_mps2: number;
  readonly braking_mps2: number;
  readonly stand_s: number;
}
export const calmDriving: TypedDriving = { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 };

const legPattern =
  /^(\d+(?:[.,]\d+)?)\s*(km|kilometres?|m|metres?|mi|miles?)\s+(?:at|with|@)\s+(\d+(?:[.,]\d+)?)\s*(km\/h|kmh|kph|mph|m\/s|mps)(?:[\s,]+(?:with\s+)?(\d+(?:[.,]\d+)?)\s*stops?\s*(?:(?:a|per|\/)\s*(km|mile))?)?$/i;

/**
 * Legs of a road typed as `3 km at 50 km/h, 2 stops a km, then 12 miles at 45 mph`. Legs are parted by "then", a
 * semicolon or a line's end; `4 stops` without "a km" are those of the whole leg. Throws `InputError` with every leg that
 * cannot be read.
 */
export function readTypedRoad(text: string): readonly TypedLeg[] {
  const legs: TypedLeg[] = [];
  const problems: Problem[] = [];
  const pieces = text
    .split(/[,\s]*\bthen\b\s*|;|\n/i)
    .map((piece) => piece.trim().replace(/[,.]+$/, ""))
    .filter((piece) => piece !== "");
  pieces.forEach((piece, i) => {
    const where = `leg ${i + 1}`;
    const found = legPattern.exec(piece);
    if (!found) {
      const message = `found "${piece.slice(0, 60)}", wanted one like "3 km at 50 km/h, 2 stops a km"`;
      problems.push({ code: "badLeg", where, message });
      return;
    }
    const leg = legOf(found);
    if (!(leg.distance_m >= 10 && leg.distance_m <= 2e6)) {
      problems.push({ code: "badLeg", where, message: `found ${leg.distance_m} m, allowed are 10 m to 2000 km` });
    }
    if (!(leg.speed_mps >= 1 && leg.speed_mps <= 70)) {
      const kmh = (leg.speed_mps / MPS_PER_KMH).toFixed(1);
      problems.push({ code: "badLeg", where, message: `found ${kmh} km/h, allowed are 3.6 to 252 km/h` });
    }
    if (!(leg.stopsPerKm <= 20)) {
      problems.push({
        code: "badLeg",
        where,
        message: `found ${leg.stopsPerKm.toFixed(0)} stops a km, allowed are 0 to 20`,
      });
    }
    legs.push(leg);
  });
  if (pieces.length === 0) {
    problems.push({ code: "noLegs", where: "road", message: 'found no leg, wanted one like "3 km at 50 km/h"' });
  }
  if (problems.length > 0) {
    throw new InputError(problems);
  }
  return legs;
}

/**
 * A trace of the legs: from rest to rest, steady speed in each, even acceleration and braking, stops spread evenly over
 * their leg. Its distance is exactly that of the legs. Where a leg is too short for its speed the car goes as fast as it
 * can get there. Corners of the speed are rows of their own, and no two rows lie more than 1 s apart.
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
  return rows.trace(id, title);
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

function legOf(found: RegExpExecArray): TypedLeg {
  const number = (text: string | undefined) => Number((text ?? "0").replace(",", "."));
  const [, distance, distanceUnit = "", speed, speedUnit = "", stops, per] = found;
  const isMile = /^mi/i.test(distanceUnit);
  const isKm = /^k/i.test(distanceUnit);
  const distance_m = number(distance) * (isMile ? M_PER_MILE : isKm ? M_PER_KM : 1);
  const factor = /mph/i.test(speedUnit) ? MPS_PER_MPH : /^k/i.test(speedUnit) ? MPS_PER_KMH : 1;
  const each_m = per === undefined ? distance_m : /mile/i.test(per) ? M_PER_MILE : M_PER_KM;
  return { distance_m, speed_mps: number(speed) * factor, stopsPerKm: number(stops) * (M_PER_KM / each_m) };
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

import { S_PER_H } from "../../../shared/units.ts";
import { createHeatFactors, warmed_K } from "../../math/heatLump.ts";
import { type ChargePoint, type ChargeSetting, chargePoint } from "./chargeCurrent.ts";

/** Steps of charge from empty to full: two for each interval of the pack's tables, whose lines are straight between. */
const STEPS = 512;
/** A charge that takes longer is none: it hardly gets on, or not at all. Assumed. */
const MOST_s = 200 * S_PER_H;

/** How a charge went, from plugging in to its end. */
export interface Charge {
  readonly time_s: number;
  /** How long the set voltage held the current back. */
  readonly taper_s: number;
  readonly end_frac: number;
  /** Of the cells, then. */
  readonly end_K: number;
  /** Into the cells as open-circuit energy, into the terminals, and out of the wall; the car's own draw is in the last alone. */
  readonly stored_J: number;
  readonly terminal_J: number;
  readonly wall_J: number;
  /** Full by charge or by its tail current, out of time, or stuck since the cells take no current. */
  readonly end: "full" | "time" | "stuck";
  readonly course: Course;
}

/** A charge as it went on, a value a step: what is given at the moments in `time_s`. */
export interface Course {
  readonly time_s: readonly number[];
  readonly soc_frac: readonly number[];
  /** From the wall so far. */
  readonly wall_J: readonly number[];
  readonly current_A: readonly number[];
}

/**
 * Charges a pack from a state of charge to its ceiling, to the tail current at the set voltage, or for a time, whichever comes first.
 *
 *   t = ∫ dq / I(q)
 *
 * in steps of charge with I straight between their ends, for which the integral is dq ln(I₀/I₁) / (I₀ − I₁): at constant voltage with
 * a straight open-circuit line and constant resistance that is the exponential I₀ exp(−t k/R) itself, k being volts a coulomb.
 */
export function chargePack(
  setting: ChargeSetting,
  from_frac: number,
  start_K: number,
  within_s: number = MOST_s,
): Charge {
  const { pack, feed, carDraw_W, ambient_K, tail_A } = setting;
  const factors = createHeatFactors();
  const course = { time_s: [0], soc_frac: [from_frac], wall_J: [0], current_A: [0] };
  let [time_s, taper_s, stored_J, terminal_J, wall_J] = [0, 0, 0, 0, 0];
  let [soc_frac, temperature_K] = [from_frac, start_K];
  let end: Charge["end"] = "full";
  const first = chargePoint(setting, soc_frac, temperature_K);
  course.current_A[0] = first.current_A;
  while (soc_frac < pack.ceiling_frac) {
    const here = chargePoint(setting, soc_frac, temperature_K);
    if (here.limit === "voltage" && here.current_A <= tail_A) break;
    if (here.current_A <= 0) {
      end = "stuck";
      break;
    }
    const next_frac = Math.min(pack.ceiling_frac, (Math.floor(soc_frac * STEPS + 1e-9) + 1) / STEPS);
    const step = stepOfCharge(here, chargePoint(setting, next_frac, temperature_K), tail_A);
    let charge_C = step.part * (next_frac - soc_frac) * pack.capacity_C;
    let dt_s = charge_C / step.mean_A;
    const isOutOfTime = !(time_s + dt_s <= within_s);
    if (isOutOfTime) {
      charge_C *= (within_s - time_s) / dt_s;
      dt_s = within_s - time_s;
    }
    const lost_J = step.lost_V * charge_C;
    const given_J = step.openCircuit_V * charge_C + lost_J;
    time_s += dt_s;
    if (here.limit === "voltage") taper_s += dt_s;
    stored_J += step.openCircuit_V * charge_C;
    terminal_J += given_J;
    if (dt_s > 0) wall_J += feed.wall_W(given_J / dt_s + carDraw_W) * dt_s;
    soc_frac = step.part === 1 && !isOutOfTime ? next_frac : soc_frac + charge_C / pack.capacity_C;
    course.time_s.push(time_s);
    course.soc_frac.push(soc_frac);
    course.wall_J.push(wall_J);
    course.current_A.push(step.end_A);
    if (dt_s > 0) {
      const heat_W = (lost_J / dt_s) * here.cellsShare_frac;
      temperature_K = warmed_K(pack.heat, factors, temperature_K, heat_W, ambient_K, dt_s);
    }
    if (isOutOfTime) {
      end = within_s < MOST_s ? "time" : "stuck";
      break;
    }
    if (step.part < 1) break;
  }
  return { time_s, taper_s, end_frac: soc_frac, end_K: temperature_K, stored_J, terminal_J, wall_J, end, course };
}

/** One step of charge: the part of it before the charge ends, and means over that part. */
function stepOfCharge(here: ChargePoint, there: ChargePoint, tail_A: number) {
  // A charger that gives less than the tail current anyway is done as soon as the set voltage is met.
  const least_A = Math.min(tail_A, here.current_A);
  const isLast = there.limit === "voltage" && there.held_A < least_A;
  const part = isLast ? (here.held_A - least_A) / (here.held_A - there.held_A) : 1;
  const end_A = isLast ? least_A : there.current_A;
  const between = (from: number, to: number) => from + 0.5 * part * (to - from);
  return {
    part,
    end_A,
    mean_A: logarithmicMean(here.current_A, end_A),
    openCircuit_V: between(here.openCircuit_V, there.openCircuit_V),
    lost_V: between(here.terminal_V - here.openCircuit_V, there.terminal_V - there.openCircuit_V),
  };
}

/** (a − b) / ln(a/b); the one value of two that are alike. None where one of them is nothing. */
function logarithmicMean(a: number, b: number): number {
  if (b <= 0) return 0;
  const ratio = a / b;
  return Math.abs(ratio - 1) < 1e-6 ? 0.5 * (a + b) : (a - b) / Math.log(ratio);
}

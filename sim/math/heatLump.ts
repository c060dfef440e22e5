import { ZERO_CELSIUS_K } from "../../shared/units.ts";
import { share } from "./share.ts";

/** One lump of heat that gives some of it off to its surroundings. `perCapacity_KpJ` is zero where no heat is worked out. */
export interface HeatLump {
  readonly perCapacity_KpJ: number;
  readonly cooling_WpK: number;
}

/** A lump whose work is held back between two temperatures: in full up to the first, none from the second on. */
export interface LimitedHeat extends HeatLump {
  readonly derateFrom_K: number;
  readonly derateTo_K: number;
}

/** Heat of one part as a job has it. */
interface HeatOfPart {
  readonly capacity_kJpK: number;
  readonly cooling_WpK: number;
  readonly derateFrom_degC: number;
  readonly derateTo_degC: number;
}

/** One lump of heat for `count` equal parts; parts without a word on heat keep their temperature and are never held back by it. */
export function prepareHeat(heat: HeatOfPart | undefined, count: number): LimitedHeat {
  const never_K = Number.POSITIVE_INFINITY;
  if (heat === undefined) return { perCapacity_KpJ: 0, cooling_WpK: 0, derateFrom_K: never_K, derateTo_K: never_K };
  return {
    perCapacity_KpJ: 1 / (count * heat.capacity_kJpK * 1000),
    cooling_WpK: count * heat.cooling_WpK,
    derateFrom_K: heat.derateFrom_degC + ZERO_CELSIUS_K,
    derateTo_K: heat.derateTo_degC + ZERO_CELSIUS_K,
  };
}

/** Share of its work that a lump still does at a temperature: straight from all to none between its two. */
export function derating_frac(heat: LimitedHeat, temperature_K: number): number {
  return 1 - share(temperature_K, heat.derateFrom_K, heat.derateTo_K);
}

/** How a lump changes over a step of one length: scratch space, worked out anew only where the length is another. */
export interface HeatFactors {
  dt_s: number;
  /** Share of the difference to the surroundings that is left after the step. */
  left_frac: number;
  /** What a steady loss adds over the step. */
  perLoss_KpW: number;
}

/** Factors of no step yet. */
export function createHeatFactors(): HeatFactors {
  return { dt_s: 0, left_frac: 1, perLoss_KpW: 0 };
}

/** Forgets them: the next step is of another lump. */
export function forgetFactors(factors: HeatFactors): void {
  factors.dt_s = 0;
}

/** Below this share of a time constant the series' first term is exact to rounding, and nothing is divided by a cooling of zero. */
const SHORT_ratio = 1e-12;

/** Works a lump's factors out for steps of `dt_s`: apart from `warmed_K`, since it is seldom needed and that is needed at every step. */
export function setHeatFactors(factors: HeatFactors, lump: HeatLump, dt_s: number): void {
  const ratio = dt_s * lump.cooling_WpK * lump.perCapacity_KpJ;
  factors.dt_s = dt_s;
  factors.left_frac = Math.exp(-ratio);
  factors.perLoss_KpW = ratio > SHORT_ratio ? -Math.expm1(-ratio) / lump.cooling_WpK : dt_s * lump.perCapacity_KpJ;
}

/** Share of the difference to the surroundings that is left of a lump's after `dt_s`. */
export function left_frac(factors: HeatFactors, lump: HeatLump, dt_s: number): number {
  if (dt_s !== factors.dt_s) setHeatFactors(factors, lump, dt_s);
  return factors.left_frac;
}

/**
 * Temperature of a lump after `dt_s` with a steady loss in it, exact at any length of the step:
 *
 *   C dT/dt = P − G (T − T₀)   →   T₁ = T₀ + (T − T₀) e^(−G dt/C) + P (1 − e^(−G dt/C)) / G;   without cooling T + P dt/C
 */
export function warmed_K(
  lump: HeatLump,
  factors: HeatFactors,
  start_K: number,
  loss_W: number,
  ambient_K: number,
  dt_s: number,
): number {
  if (dt_s !== factors.dt_s) setHeatFactors(factors, lump, dt_s);
  // Written as a change, so that a lump without heat keeps its temperature to the last digit.
  return start_K - (1 - factors.left_frac) * (start_K - ambient_K) + factors.perLoss_KpW * loss_W;
}

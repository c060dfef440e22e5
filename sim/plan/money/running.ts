import type { Job } from "../../../shared/job/job.ts";
import type { Alternative, Running } from "../../../shared/job/schema/costs.ts";
import { presentYears } from "./presentYears.ts";
import { between, exactly, product, type Span, spanOf, sum, times } from "./span.ts";

/** What keeping a car costs: for each kilometre what goes up with the price of its energy, and what stays as it is. */
export interface RunningCosts {
  /** Fuel or electricity, for each kilometre in the first year. */
  readonly energyPerKm: Span;
  /** How the price of that drifts from year to year. */
  readonly drift: Span;
  /** Road charges, for each kilometre of the usual day. */
  readonly chargePerKm: number;
  /** Servicing and insurance of a year. */
  readonly upkeep: Span;
}

/** What of a job its running costs hang on. */
export type RunningJob = Pick<Job, "usualDay_km" | "origins">;

/** The car as it runs now, or as the client would have it run without the conversion; nothing while the price of fuel is not known. */
export function runningNow(
  running: Running,
  job: RunningJob,
  other?: Alternative["running"],
): RunningCosts | undefined {
  const { price_perl } = running;
  if (price_perl === undefined) return undefined;
  const { servicing, roadCharge_perday } = other ?? running.now;
  const open_frac = other ? 0 : (job.origins["costs.running.use_l100km"]?.plusMinus_frac ?? 0);
  const use_l100km = other?.use_l100km ?? running.use_l100km;
  const used_l100km = between(use_l100km * Math.max(0, 1 - open_frac), use_l100km * (1 + open_frac));
  return {
    energyPerKm: times(used_l100km, price_perl / 100),
    drift: driftOf(running.fuelDrift),
    chargePerKm: chargePerKm(roadCharge_perday, running, job),
    upkeep: spanOf(servicing),
  };
}

/** The car as converted. `costPerKm` is that of its electricity. */
export function runningConverted(running: Running, job: RunningJob, costPerKm: Span): RunningCosts {
  const { converted, insuranceMore } = running;
  return {
    energyPerKm: costPerKm,
    drift: driftOf(running.electricityDrift),
    chargePerKm: chargePerKm(converted.roadCharge_perday, running, job),
    upkeep: sum(spanOf(converted.servicing), exactly(insuranceMore)),
  };
}

/** Costs of the first year. */
export function firstYear(costs: RunningCosts, distance_km: number): Span {
  return sum(times(costs.energyPerKm, distance_km), exactly(costs.chargePerKm * distance_km), costs.upkeep);
}

/** Costs of so many years together, as they are worth today. */
export function runningOver(costs: RunningCosts, distance_km: number, years: number, discount_frac: number): Span {
  const { energy, rest } = overYears(costs, years, discount_frac);
  return sum(times(energy, distance_km), exactly(costs.chargePerKm * distance_km * rest), times(costs.upkeep, rest));
}

/** Energy for each kilometre a year over all those years, and how often what does not drift is paid. */
export function overYears(costs: RunningCosts, years: number, discount_frac: number) {
  const { drift, energyPerKm } = costs;
  const factor = (drift_frac: number) => presentYears(years, drift_frac, discount_frac);
  const factors = { value: factor(drift.value), low: factor(drift.low), high: factor(drift.high) };
  return { energy: product(energyPerKm, factors), rest: factor(0) };
}

function chargePerKm(roadCharge_perday: number, { chargedDays_frac }: Running, { usualDay_km }: RunningJob): number {
  return (roadCharge_perday * chargedDays_frac) / usualDay_km;
}

function driftOf({ low_frac, high_frac }: Running["fuelDrift"]): Span {
  return between(low_frac, high_frac);
}

import { REFERENCE_AIR_K, REFERENCE_AIR_kgpm3, TYRE_TEMPERATURE_coeff } from "../../constants.ts";
import { type CoastFit, fitCoastDown, type Terms, type TimedBand } from "./fitCoastDown.ts";

/** A band of speed with the times of its runs, in one direction of the road and in the other. */
export interface CoastBand {
  readonly high_mps: number;
  readonly low_mps: number;
  readonly there_s: readonly number[];
  readonly back_s: readonly number[];
}

/** The car and the day of a coast-down. */
export interface CoastDay {
  readonly mass_kg: number;
  /** Mass that the rotating parts count for as well, over the car's own: 1.03 to 1.05 in neutral. */
  readonly rotating_ratio: number;
  readonly air_kgpm3: number;
  readonly air_K: number;
  /** Mean wind along the road, whichever way: with both directions driven it is in f0 as f2 w². */
  readonly wind_mps: number;
  readonly gravity_mps2: number;
  /** How far one stopped time may be off, one standard deviation. */
  readonly stopwatch_s: number;
}

/** A value with the band that the stopwatch makes. */
export interface Banded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Road load as found: at reference conditions (20 degC, 100 kPa, calm), with the mass it was found at. */
export interface CoastDown {
  readonly f0_N: Banded;
  readonly f1_Npmps: Banded;
  readonly f2_Npmps2: Banded;
  readonly dragArea_m2: Banded;
  readonly rolling_coeff: Banded;
  readonly mass_kg: number;
  readonly fit: CoastFit;
}

/**
 * Times of several runs as one: their harmonic mean, the one whose mean force is the mean of the runs' forces. With both directions
 * driven, the harmonic mean of the two ways, 2 / (1/t_there + 1/t_back).        [GTR15, Annex 4, para 4.3.1] [ISO10521-1, coast-down]
 */
export function meanTime_s(there_s: readonly number[], back_s: readonly number[]): number {
  return 1 / runsOf(there_s, back_s).reduce((sum, { time_s, weight_frac }) => sum + weight_frac / time_s, 0);
}

/**
 * Road load from a coast-down, or undefined where no slowing force fits the times. Corrected to reference conditions:
 *
 *   f0* = (f0 - f2 w²) (1 + K0 (T - 20)),  f1* = f1 (1 + K0 (T - 20)),  f2* = f2 · 1.189 / rho       [GTR15, Annex 4] [ISO10521-1]
 *   CdA = 2 f2 / rho,  crr = f0* / (m g)
 *
 * Bands are one standard deviation each way of what the stopwatch alone makes, times of different runs independent.
 */
export function evaluateCoastDown(bands: readonly CoastBand[], day: CoastDay, terms: Terms): CoastDown | undefined {
  const effective_kg = day.mass_kg * day.rotating_ratio;
  const timed = bands.map(({ high_mps, low_mps, there_s, back_s }): TimedBand => {
    const time_s = meanTime_s(there_s, back_s);
    return { high_mps, low_mps, time_s, sigma_s: sigmaOfMean_s(there_s, back_s, time_s, day.stopwatch_s) };
  });
  const fit = fitCoastDown(timed, effective_kg, terms);
  if (fit === undefined) return undefined;
  const { covariance } = fit;
  const last = covariance.length - 1;
  const softer_ratio = 1 + TYRE_TEMPERATURE_coeff * (day.air_K - REFERENCE_AIR_K);
  const wind2 = day.wind_mps * day.wind_mps;
  // f0 - f2 w² by the rule of propagation.
  const sigma0_N = Math.sqrt(
    covariance[0][0] - 2 * wind2 * covariance[0][last] + wind2 * wind2 * covariance[last][last],
  );
  const f0_N = banded((fit.f0_N - fit.f2_Npmps2 * wind2) * softer_ratio, sigma0_N * softer_ratio);
  const sigma2 = Math.sqrt(covariance[last][last]);
  return {
    f0_N,
    f1_Npmps: banded(fit.f1_Npmps * softer_ratio, terms === 3 ? Math.sqrt(covariance[1][1]) * softer_ratio : 0),
    f2_Npmps2: scaled(fit.f2_Npmps2, sigma2, REFERENCE_AIR_kgpm3 / day.air_kgpm3),
    dragArea_m2: scaled(fit.f2_Npmps2, sigma2, 2 / day.air_kgpm3),
    rolling_coeff: scaled(f0_N.value, f0_N.high - f0_N.value, 1 / (day.mass_kg * day.gravity_mps2)),
    mass_kg: day.mass_kg,
    fit,
  };
}

/** How far that mean may be off where each time may be off by so much: d t / d t_i = weight (t / t_i)², times independent. */
function sigmaOfMean_s(there_s: readonly number[], back_s: readonly number[], mean_s: number, one_s: number): number {
  const parts = runsOf(there_s, back_s).map(({ time_s, weight_frac }) => weight_frac * (mean_s / time_s) ** 2);
  return Math.max(one_s, 1e-9) * Math.hypot(...parts);
}

/** Every run with its weight: ways alike, and runs of one way alike. */
function runsOf(there_s: readonly number[], back_s: readonly number[]) {
  const ways = [there_s, back_s].filter((times) => times.length > 0);
  return ways.flatMap((times) => times.map((time_s) => ({ time_s, weight_frac: 1 / (ways.length * times.length) })));
}

function banded(value: number, sigma: number): Banded {
  return { value, low: value - sigma, high: value + sigma };
}

function scaled(value: number, sigma: number, factor: number): Banded {
  return banded(value * factor, sigma * factor);
}

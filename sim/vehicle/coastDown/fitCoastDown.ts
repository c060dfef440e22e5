import { solveLinear } from "../../math/solveLinear.ts";
import { coastTime_s, type SlowingForce } from "./coastTime.ts";

/** One band of speed with the time the car took through it, and how far that may be off (one standard deviation). */
export interface TimedBand {
  readonly high_mps: number;
  readonly low_mps: number;
  readonly time_s: number;
  readonly sigma_s: number;
}

/** Terms of the law: constant and square, or constant, linear and square. */
export type Terms = 2 | 3;

/** A law fitted to timed bands, with the covariance of its terms in the order of `f0, f1, f2` (or `f0, f2`). */
export interface CoastFit extends SlowingForce {
  readonly terms: Terms;
  readonly covariance: readonly (readonly number[])[];
  /** Root mean square of what the fitted times miss the measured ones by; 0 where there are as many terms as bands. */
  readonly residual_s: number;
}

const ROUNDS = 60;

/**
 * The slowing force whose coast-down times come nearest to the measured ones, by least squares over the times themselves, each weighted by
 * its own error: the law is fitted, not forces at mean speeds, so that wide bands make no error. Two terms as [J1263, evaluation],
 * three as [GTR15, Annex 4, para 4.3.1] and [ISO10521-1, coast-down].
 *
 * Starts from the forces at the bands' mean speeds, m_eff dv/dt, and goes on by Gauss and Newton with halved steps. Undefined where there
 * are fewer bands than terms, or where no law with a force above zero fits.
 */
export function fitCoastDown(bands: readonly TimedBand[], effective_kg: number, terms: Terms): CoastFit | undefined {
  if (bands.length < terms) return undefined;
  const forces = bands.map(({ high_mps, low_mps, time_s }) => ({
    mean_mps: 0.5 * (high_mps + low_mps),
    force_N: (effective_kg * (high_mps - low_mps)) / time_s,
  }));
  const byForces = leastSquares(
    forces.map(({ mean_mps }) => powers(mean_mps, terms)),
    forces.map(({ force_N }) => force_N),
  );
  if (byForces === undefined) return undefined;
  // A start that would not slow at some speed gives way to the mean force, everywhere.
  const mean_N = forces.reduce((sum, { force_N }) => sum + force_N, 0) / forces.length;
  const start = Number.isFinite(misfit(byForces, bands, effective_kg))
    ? byForces
    : byForces.map((_, i) => (i === 0 ? mean_N : 0));
  const at = improved(start, bands, effective_kg);
  if (!Number.isFinite(misfit(at, bands, effective_kg))) return undefined;
  const covariance = inverseOfNormal(jacobian(at, bands, effective_kg));
  if (covariance === undefined) return undefined;
  const squares = bands.map((band) => (band.time_s - timeOf(at, band, effective_kg)) ** 2);
  return {
    ...forceOf(at),
    terms,
    covariance,
    residual_s: bands.length === terms ? 0 : Math.sqrt(squares.reduce((a, b) => a + b, 0) / bands.length),
  };
}

/** The terms after the steps of Gauss and Newton, each halved until the misfit falls; ends where none does. */
function improved(start: readonly number[], bands: readonly TimedBand[], effective_kg: number): readonly number[] {
  let at = start;
  let error = misfit(at, bands, effective_kg);
  for (let round = 0; round < ROUNDS; round++) {
    const left = bands.map((band) => (band.time_s - timeOf(at, band, effective_kg)) / band.sigma_s);
    const move = leastSquares(jacobian(at, bands, effective_kg), left);
    if (move === undefined) return at;
    let size = 1;
    for (; size > 1e-9; size *= 0.5) {
      const tried = moved(at, move, size);
      const triedError = misfit(tried, bands, effective_kg);
      if (!(triedError < error)) continue;
      at = tried;
      error = triedError;
      break;
    }
    if (size <= 1e-9) return at;
  }
  return at;
}

function moved(from: readonly number[], by: readonly number[], size: number): number[] {
  return from.map((value, i) => value + size * by[i]);
}

function powers(speed_mps: number, terms: Terms): number[] {
  return terms === 2 ? [1, speed_mps * speed_mps] : [1, speed_mps, speed_mps * speed_mps];
}

function forceOf(at: readonly number[]): SlowingForce {
  return at.length === 2
    ? { f0_N: at[0], f1_Npmps: 0, f2_Npmps2: at[1] }
    : { f0_N: at[0], f1_Npmps: at[1], f2_Npmps2: at[2] };
}

function timeOf(at: readonly number[], { high_mps, low_mps }: TimedBand, effective_kg: number): number {
  return coastTime_s(forceOf(at), effective_kg, high_mps, low_mps);
}

/** Sum of the squared misses in units of their own error; NaN for a law that would not slow the car. */
function misfit(at: readonly number[], bands: readonly TimedBand[], effective_kg: number): number {
  return bands.reduce((sum, band) => sum + ((band.time_s - timeOf(at, band, effective_kg)) / band.sigma_s) ** 2, 0);
}

/** How the times change with each term, by central differences, in units of their error. */
function jacobian(at: readonly number[], bands: readonly TimedBand[], effective_kg: number): number[][] {
  const highest_mps = Math.max(...bands.map(({ high_mps }) => high_mps));
  const scale_N = Math.abs(at[0]) + Math.abs(at[at.length - 1]) * highest_mps * highest_mps;
  return bands.map((band) =>
    at.map((_, k) => {
      const step = (1e-5 * scale_N) / (k === 0 ? 1 : k === at.length - 1 ? highest_mps * highest_mps : highest_mps);
      const shifted = (by: number) =>
        timeOf(
          at.map((value, i) => (i === k ? value + by : value)),
          band,
          effective_kg,
        );
      return (shifted(step) - shifted(-step)) / (2 * step) / band.sigma_s;
    }),
  );
}

/** Columns brought to one length first: newtons and newtons a speed squared are far apart in size. */
function leastSquares(rows: readonly (readonly number[])[], targets: readonly number[]): number[] | undefined {
  const { scales, normal } = normalOf(rows);
  const moments = scales.map((scale, j) => rows.reduce((sum, row, i) => sum + row[j] * targets[i], 0) / scale);
  return solveLinear(normal, moments)?.map((value, j) => value / scales[j]);
}

function inverseOfNormal(rows: readonly (readonly number[])[]): number[][] | undefined {
  const { scales, normal } = normalOf(rows);
  const columns = scales.map((_, k) =>
    solveLinear(
      normal,
      scales.map((__, j) => (j === k ? 1 : 0)),
    ),
  );
  if (columns.some((column) => column === undefined)) return undefined;
  return scales.map((scale, j) => scales.map((other, k) => (columns[k]?.[j] ?? 0) / (scale * other)));
}

function normalOf(rows: readonly (readonly number[])[]): { scales: number[]; normal: number[][] } {
  const scales = rows[0].map((_, j) => Math.sqrt(rows.reduce((sum, row) => sum + row[j] * row[j], 0)) || 1);
  const normal = scales.map((scale, j) =>
    scales.map((other, k) => rows.reduce((sum, row) => sum + row[j] * row[k], 0) / (scale * other)),
  );
  return { scales, normal };
}

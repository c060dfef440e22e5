import { solveLinear } from "../../math/solveLinear.ts";
import { coastTime_s, coastTimeSlope, type SlowingForce } from "./coastTime.ts";

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

/** The powers of speed that the terms go with. */
const POWERS: Readonly<Record<Terms, readonly number[]>> = { 2: [0, 2], 3: [0, 1, 2] };
/** Parts of a step that are tried, the whole one first. */
const PARTS = Array.from({ length: 30 }, (_, i) => 0.5 ** i);

/**
 * The slowing force whose coast-down times come nearest to the measured ones, by least squares over the times themselves, each weighted by
 * its own error: the law is fitted, not forces at mean speeds, so that wide bands make no error. Two terms as [J1263, evaluation],
 * three as [GTR15, Annex 4, para 4.3.1] and [ISO10521-1, coast-down].
 *
 * Starts from a small steady force and goes on by Gauss and Newton, a step halved until the misfit falls. It ends where that falls no
 * more, as it must at the last digit. Undefined where there are fewer bands than terms, or where no law with a force above zero fits.
 */
export function fitCoastDown(bands: readonly TimedBand[], effective_kg: number, terms: Terms): CoastFit | undefined {
  if (bands.length < terms) return undefined;
  const powers = POWERS[terms];
  const missed_s = (at: readonly number[]) => bands.map((band) => band.time_s - timeOf(at, band, effective_kg));
  const weighted = (at: readonly number[]) => missed_s(at).map((each_s, i) => each_s / bands[i].sigma_s);
  const slopes = (at: readonly number[]) =>
    bands.map(({ high_mps, low_mps, sigma_s }) =>
      powers.map((power) => coastTimeSlope(forceOf(at), effective_kg, high_mps, low_mps, power) / sigma_s),
    );

  // One newton, whatever the speed: a step about doubles a force that is too small, so that it is soon large enough.
  let at = powers.map((power) => 0 ** power);
  while (true) {
    const left = weighted(at);
    const misfit = Math.hypot(...left);
    const rows = slopes(at);
    const covariance = inverseOfNormal(rows);
    if (covariance === undefined || Number.isNaN(misfit)) return undefined;
    const moments = powers.map((_, k) =>
      dot(
        rows.map((row) => row[k]),
        left,
      ),
    );
    const next = PARTS.map((part) => at.map((value, k) => value + part * dot(covariance[k], moments))).find(
      (tried) => Math.hypot(...weighted(tried)) < misfit,
    );
    if (next === undefined) {
      const residual_s = bands.length === terms ? 0 : Math.hypot(...missed_s(at)) / Math.sqrt(bands.length);
      return { ...forceOf(at), terms, covariance, residual_s };
    }
    at = next;
  }
}

function forceOf(at: readonly number[]): SlowingForce {
  return at.length === 2
    ? { f0_N: at[0], f1_Npmps: 0, f2_Npmps2: at[1] }
    : { f0_N: at[0], f1_Npmps: at[1], f2_Npmps2: at[2] };
}

function timeOf(at: readonly number[], { high_mps, low_mps }: TimedBand, effective_kg: number): number {
  return coastTime_s(forceOf(at), effective_kg, high_mps, low_mps);
}

/** The inverse of the normal matrix; columns are brought to one length on the way: newtons and newtons a speed squared are far apart in size. */
function inverseOfNormal(rows: readonly (readonly number[])[]): number[][] | undefined {
  const columns = rows[0].map((_, k) => rows.map((row) => row[k]));
  const lengths = columns.map((column) => Math.hypot(...column));
  const unit = columns.map((column, k) => column.map((value) => value / lengths[k]));
  const normal = unit.map((one) => unit.map((other) => dot(one, other)));
  const inverse: number[][] = [];
  for (const [k, length] of lengths.entries()) {
    const column = solveLinear(
      normal,
      lengths.map((_, j) => (j === k ? 1 : 0)),
    );
    if (column === undefined) return undefined;
    inverse.push(column.map((value, j) => value / (length * lengths[j])));
  }
  return inverse;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i], 0);
}

import { considerCovariance } from "../../math/considerCovariance.ts";
import { covarianceOf } from "../../math/leastSquares.ts";
import type { Change } from "./adjustModel.ts";
import { type Differences, slopesAt } from "./energyDifferences.ts";
import { type EnergyErrors, factorOf } from "./energyErrors.ts";
import type { Observations } from "./observations.ts";
import { changeOf, NINE_OF_TEN, type Parameter, type ParameterId } from "./parameters.ts";
import { whiten } from "./whiten.ts";
import { whitenedSlopes } from "./whitenedSlopes.ts";

/** A value that the log corrects, with the band that holds the truth nine times of ten. */
export interface Fitted {
  readonly id: ParameterId;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /**
   * Half the band of this value together with whatever looks like it in a log, which then counts as this: what the log itself leaves open.
   * A log tells the sum, and the sum is what the next drive uses.
   */
  readonly ownHalf: number;
  /** What is not corrected and looks like this value in a log. */
  readonly alike: readonly Alike[];
  /** Of the job: 1, or 0 for what is added. */
  readonly start: number;
  /** How far it was thought to lie off before the log. */
  readonly before: number;
}

/** A value that is left as in the job, and what it means for one that is corrected. */
export interface Alike {
  readonly id: ParameterId;
  /** By how much the corrected value would come out otherwise for each that this one is: of ratios, per cent a per cent. */
  readonly slope_ratio: number;
  /** What this one's own band, of nine in ten, makes open of the corrected value: half a band. */
  readonly half: number;
}

/** Two values that move the same figures: what the log says of one hangs on the other. */
export interface Mixed {
  readonly ids: readonly [ParameterId, ParameterId];
  /** By how much the first moves for each of the second: of ratios, per cent a per cent. */
  readonly slope_ratio: number;
  readonly correlation: number;
}

export interface CarFit {
  readonly fitted: readonly Fitted[];
  /** What the log does not carry: left as in the job, its own band counted in those of the others. */
  readonly left: readonly ParameterId[];
  readonly mixed: readonly Mixed[];
  readonly change: Change;
  /** What is left of the differences over how far they may be off: near 1 where the model fits. */
  readonly misfit_ratio: number;
  readonly segments: number;
}

/** Pairs with a stronger correlation than this are reported. */
const MIXED_coeff = 0.45;

/** Differences that are left over up to so many times what clocks, heights and noise explain are no reason to doubt the bands. */
const EXPLAINED_ratio = 1.5;

/**
 * By how much bands are widened where far more is left over than usual. As noise it is in the errors already, which are found from it
 * (`likelyErrors`); what is no noise, times that are known roughly or another gear, pulls values too, by nobody knows how much. So bands go
 * with what is left, as measurements are treated that scatter more than they should [Birge1932]. Assumed.
 */
function wider(misfit_ratio: number): number {
  return Math.max(1, misfit_ratio / EXPLAINED_ratio);
}

/** Where a fit came to: the values of what was fitted, and the factor of how far differences may be off. */
export interface Fit {
  readonly active: readonly Parameter[];
  readonly values: Float64Array;
  readonly lower: Float64Array;
}

/** What a fit of some of the parameters says of all of them: values, bands, and what looks alike in the log. */
export function describeFit(
  differences: Differences,
  parameters: readonly Parameter[],
  { active, values, lower }: Fit,
  { energy_J, errors }: Observations,
): CarFit {
  const n = energy_J.length;
  const at = parameters.map((parameter) => {
    const k = active.indexOf(parameter);
    return k < 0 ? parameter.start : values[k];
  });
  const slopes_J = slopesAt(differences, parameters, at, n);
  const of = (these: readonly Parameter[]) =>
    whitenedSlopes(
      these.map((parameter) => slopes_J[parameters.indexOf(parameter)]),
      these,
      lower,
    );
  const others = parameters.filter((parameter) => !active.includes(parameter));
  const otherColumns = others.length > 0 ? of(others).columns : [];
  const { jacobian, columns } = of(active);
  const count = active.length;
  const byLog = covarianceOf(jacobian, count);
  const misfit_ratio = misfitOf(differences, active, values, errors);
  const narrow = byLog.map((each) => each * wider(misfit_ratio) ** 2);
  active.forEach(({ method = 0 }, k) => {
    narrow[k * count + k] += method ** 2;
  });
  const { whole, moves } = considerCovariance(
    columns,
    byLog,
    others.map(({ before }, o) => ({ slope: otherColumns[o], spread: before })),
    narrow,
  );
  const half = (covariance: Float64Array, k: number) => NINE_OF_TEN * Math.sqrt(covariance[k * count + k]);
  return {
    fitted: active.map(({ id, start, before, low, high }, k) => ({
      id,
      start,
      before,
      value: values[k],
      ownHalf: half(narrow, k),
      alike: others
        .map((other, o) => ({
          id: other.id,
          slope_ratio: moves[o][k],
          half: NINE_OF_TEN * Math.abs(moves[o][k]) * other.before,
        }))
        .sort((one, next) => next.half - one.half),
      low: Math.max(low, values[k] - half(whole, k)),
      high: Math.min(high, values[k] + half(whole, k)),
    })),
    left: others.map(({ id }) => id),
    mixed: [...mixedWithOthers(active, others, whole, moves), ...mixedAmongFitted(active, whole)],
    change: changeOf(
      active.map(({ id }) => id),
      values,
    ),
    misfit_ratio,
    segments: n,
  };
}

/** Fitted values that hang on one that was left as it is. */
function mixedWithOthers(
  active: readonly Parameter[],
  others: readonly Parameter[],
  whole: Float64Array,
  moves: readonly (readonly number[])[],
): Mixed[] {
  return others.flatMap((other, o) =>
    active.flatMap(({ id }, k) => {
      const slope_ratio = moves[o][k];
      const correlation = (Math.abs(slope_ratio) * other.before) / Math.sqrt(whole[k * active.length + k]);
      return correlation > MIXED_coeff ? [{ ids: [id, other.id] as const, slope_ratio, correlation }] : [];
    }),
  );
}

/** Fitted values that hang on one another. */
function mixedAmongFitted(active: readonly Parameter[], whole: Float64Array): Mixed[] {
  const count = active.length;
  return active.flatMap(({ id }, k) =>
    active.slice(0, k).flatMap((other, l) => {
      const [both, theirs] = [whole[k * count + l], whole[l * count + l]];
      const correlation = both / Math.sqrt(whole[k * count + k] * theirs);
      return Math.abs(correlation) > MIXED_coeff
        ? [{ ids: [id, other.id] as const, slope_ratio: both / theirs, correlation }]
        : [];
    }),
  );
}

/** What is left of the differences over what clocks, heights and noise were thought to leave before the log. */
function misfitOf(
  differences: Differences,
  active: readonly Parameter[],
  values: Float64Array,
  errors: EnergyErrors,
): number {
  const left = new Float64Array(errors.count);
  differences(active, values, left);
  whiten(factorOf(errors, errors.usual), left);
  const sum = left.reduce((total, each) => total + each * each, 0);
  return Math.sqrt(sum / Math.max(1, errors.count - active.length));
}

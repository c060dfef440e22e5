import { covarianceOf, leastSquares } from "../../math/leastSquares.ts";
import type { Model } from "../../step/model.ts";
import { adjustModel, type Change } from "./adjustModel.ts";
import { driveAsMeasured, scratchFor } from "./driveAsMeasured.ts";
import { type EnergyErrors, factorOf } from "./energyErrors.ts";
import { likelyErrors } from "./likelyErrors.ts";
import { type Observations, predictedEnergy_J } from "./observations.ts";
import type { PackSamples } from "./packSamples.ts";
import { changeOf, NINE_OF_TEN, type Parameter, type ParameterId } from "./parameters.ts";
import type { DrivePart } from "./recording.ts";
import { whiten } from "./whiten.ts";

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

/** A log that narrows a value to this share of what was known before it carries it. */
const CARRIED_frac = 0.5;
/** Pairs with a stronger correlation than this are reported. */
const MIXED_coeff = 0.45;
const LEAST_SEGMENTS = 8;

/** What a fit works on. */
export interface FitSetting {
  readonly model: Model;
  readonly parts: readonly DrivePart[];
  readonly startSoc_frac: number;
  readonly samples: PackSamples;
  readonly observations: Observations;
  readonly parameters: readonly Parameter[];
}

/**
 * Corrects as many values of a car as its log carries, so that the energies of its segments come out as measured: least squares with what
 * was known before as further measurements. First the slopes of all values tell which the log narrows at all; only those are fitted.
 *
 * The others stay, and what they may be off goes into the bands (a consider covariance [Bierman1977, ch. 8]):
 *
 *   P = (JᵀJ + B⁻¹)⁻¹,   S = -P JᵀK,   band² = P + S C Sᵀ
 *
 * with J and K the slopes of fitted and other values, B and C how far they were thought to be off before. How far energies may be off is
 * found from what is left of them.
 */
export function fitCar(setting: FitSetting): CarFit {
  const { parameters, observations } = setting;
  const n = observations.energy_J.length;
  const differences = differencesOf(setting);
  const none: CarFit = {
    fitted: [],
    left: parameters.map(({ id }) => id),
    mixed: [],
    change: changeOf([], []),
    misfit_ratio: 1,
    segments: n,
  };
  if (n < LEAST_SEGMENTS) return none;
  let active = parameters.filter(
    ({ id }) => id === "rolling" || id === "drag" || id === "accessories" || id === "regen",
  );
  let lower = factorOf(observations.errors, observations.errors.usual);
  let values = new Float64Array(active.map(({ start }) => start));
  for (let pass = 0; pass < 3; pass++) {
    const at = parameters.map((parameter) => {
      const k = active.indexOf(parameter);
      return k < 0 ? parameter.start : values[k];
    });
    const slopes_J = slopesAt(differences, parameters, at, n);
    active = carriedOf(slopes_J, parameters, lower);
    values = new Float64Array(active.map((parameter) => at[parameters.indexOf(parameter)]));
    if (active.length === 0) return none;
    values = new Float64Array(fitActive(differences, active, values, lower, n).parameters);
    const left_J = new Float64Array(n);
    differences(active, values, left_J);
    const theirs_J = active.map((parameter) => slopes_J[parameters.indexOf(parameter)]);
    lower = likelyErrors(observations.errors, left_J, theirs_J).lower;
  }
  return described(differences, parameters, active, values, lower, observations);
}

type Differences = (active: readonly Parameter[], values: ArrayLike<number>, into: Float64Array) => void;

/** Measured less predicted energy by segment, in joules, for some values of some parameters. */
function differencesOf({ model, parts, startSoc_frac, samples, observations }: FitSetting): Differences {
  const scratch = scratchFor(parts);
  const zeroEnergy_Vs = new Float64Array(observations.energy_J.length);
  observations.segmentOf.forEach((s, k) => {
    if (s >= 0) zeroEnergy_Vs[s] += samples.weight_s[k] * samples.voltage_V[k];
  });
  return (active, values, into) => {
    const ids = active.map(({ id }) => id);
    const gain = ids.indexOf("gain");
    const zero = ids.indexOf("zero");
    const drive = driveAsMeasured(adjustModel(model, changeOf(ids, values)), parts, startSoc_frac, scratch);
    const predicted_J = predictedEnergy_J(drive, samples, observations);
    const gain_ratio = gain < 0 ? 1 : values[gain];
    const zero_A = zero < 0 ? 0 : values[zero];
    into.set(
      observations.energy_J.map((energy_J, s) => energy_J - gain_ratio * predicted_J[s] - zero_A * zeroEnergy_Vs[s]),
    );
  };
}

/** Slopes of the differences by each parameter, in joules each. */
function slopesAt(
  differences: Differences,
  parameters: readonly Parameter[],
  at: readonly number[],
  n: number,
): Float64Array[] {
  const [above, below] = [new Float64Array(n), new Float64Array(n)];
  return parameters.map(({ before }, k) => {
    const by = 0.05 * before;
    const moved = (step: number) => at.map((value, l) => (l === k ? value + step : value));
    differences(parameters, moved(by), above);
    differences(parameters, moved(-by), below);
    return above.map((each, i) => (each - below[i]) / (2 * by));
  });
}

/** Whitened slopes side by side, and below them what was known before: a row to a parameter. */
function jacobianOf(slopes_J: readonly Float64Array[], parameters: readonly Parameter[], lower: Float64Array) {
  const count = parameters.length;
  const n = slopes_J[0].length;
  const jacobian = new Float64Array((n + count) * count);
  const columns = slopes_J.map((slope_J) => {
    const column = slope_J.slice();
    whiten(lower, column);
    return column;
  });
  columns.forEach((column, k) => {
    for (let i = 0; i < n; i++) jacobian[i * count + k] = column[i];
    jacobian[(n + k) * count + k] = 1 / parameters[k].before;
  });
  return { jacobian, columns };
}

/** Which of the parameters the log narrows, all of them unknown at once. */
function carriedOf(slopes_J: readonly Float64Array[], parameters: readonly Parameter[], lower: Float64Array) {
  const count = parameters.length;
  const after = covarianceOf(jacobianOf(slopes_J, parameters, lower).jacobian, count);
  return parameters.filter(
    ({ before, method = 0 }, k) => Math.sqrt(after[k * count + k] + method ** 2) <= CARRIED_frac * before,
  );
}

function fitActive(
  differences: Differences,
  active: readonly Parameter[],
  start: Float64Array,
  lower: Float64Array,
  n: number,
) {
  const own = new Float64Array(n);
  return leastSquares({
    start: [...start],
    sizes: active.map(({ before }) => before),
    low: active.map(({ low }) => low),
    high: active.map(({ high }) => high),
    count: n + active.length,
    tolerance_ratio: 1e-7,
    residuals: (values, into) => {
      differences(active, values, own);
      whiten(lower, own);
      into.set(own);
      active.forEach(({ start: before, before: spread }, k) => {
        into[n + k] = (values[k] - before) / spread;
      });
    },
  });
}

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

function described(
  differences: Differences,
  parameters: readonly Parameter[],
  active: readonly Parameter[],
  values: Float64Array,
  lower: Float64Array,
  { energy_J, errors }: Observations,
): CarFit {
  const n = energy_J.length;
  const at = parameters.map((parameter) => {
    const k = active.indexOf(parameter);
    return k < 0 ? parameter.start : values[k];
  });
  const slopes_J = slopesAt(differences, parameters, at, n);
  const others = parameters.filter((parameter) => !active.includes(parameter));
  const of = (these: readonly Parameter[]) =>
    jacobianOf(
      these.map((parameter) => slopes_J[parameters.indexOf(parameter)]),
      these,
      lower,
    );
  const { jacobian, columns } = of(active);
  const a = active.length;
  const byLog = covarianceOf(jacobian, a);
  const misfit_ratio = misfitOf(differences, active, values, errors);
  const narrow = byLog.map((each) => each * wider(misfit_ratio) ** 2);
  active.forEach(({ method = 0 }, k) => {
    narrow[k * a + k] += method ** 2;
  });
  const whole = narrow.slice();
  const mixed: Mixed[] = [];
  const alike: Alike[][] = active.map(() => []);
  const otherColumns = others.length > 0 ? of(others).columns : [];
  others.forEach((other, o) => {
    const theirs = otherColumns[o];
    // How the fitted values move when this one is off by one: -P JᵀK.
    const pulled = columns.map((each) => each.reduce((sum, slope, i) => sum + slope * theirs[i], 0));
    const moves = Array.from(
      { length: a },
      (_, k) => -pulled.reduce((sum, value, l) => sum + byLog[k * a + l] * value, 0),
    );
    for (let k = 0; k < a; k++)
      for (let l = 0; l < a; l++) whole[k * a + l] += moves[k] * moves[l] * other.before * other.before;
    moves.forEach((slope_ratio, k) => {
      alike[k].push({ id: other.id, slope_ratio, half: NINE_OF_TEN * Math.abs(slope_ratio) * other.before });
      const share = Math.abs(slope_ratio) * other.before;
      const own = Math.sqrt(whole[k * a + k]);
      if (share > MIXED_coeff * own)
        mixed.push({ ids: [active[k].id, other.id], slope_ratio, correlation: share / own });
    });
  });
  for (let k = 0; k < a; k++)
    for (let l = 0; l < k; l++) {
      const correlation = whole[k * a + l] / Math.sqrt(whole[k * a + k] * whole[l * a + l]);
      if (Math.abs(correlation) > MIXED_coeff)
        mixed.push({
          ids: [active[k].id, active[l].id],
          slope_ratio: whole[k * a + l] / whole[l * a + l],
          correlation,
        });
    }
  return {
    fitted: active.map(({ id, start, before, low, high }, k) => {
      const half = NINE_OF_TEN * Math.sqrt(whole[k * a + k]);
      const ownHalf = NINE_OF_TEN * Math.sqrt(narrow[k * a + k]);
      const value = values[k];
      return {
        id,
        start,
        before,
        value,
        ownHalf,
        alike: alike[k].sort((one, next) => next.half - one.half),
        low: Math.max(low, value - half),
        high: Math.min(high, value + half),
      };
    }),
    left: others.map(({ id }) => id),
    mixed,
    change: changeOf(
      active.map(({ id }) => id),
      values,
    ),
    misfit_ratio,
    segments: n,
  };
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

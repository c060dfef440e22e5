import { covarianceOf, leastSquares } from "../../math/leastSquares.ts";
import { type CarFit, describeFit } from "./describeFit.ts";
import { type Differences, differencesOf, type LoggedDrive, slopesAt } from "./energyDifferences.ts";
import { factorOf } from "./energyErrors.ts";
import { likelyErrors } from "./likelyErrors.ts";
import { changeOf, type Parameter } from "./parameters.ts";
import { whiten } from "./whiten.ts";
import { whitenedSlopes } from "./whitenedSlopes.ts";

/** A log that narrows a value to this share of what was known before it carries it. */
const CARRIED_frac = 0.5;
const LEAST_SEGMENTS = 8;

/** What a fit works on. */
export interface FitSetting extends LoggedDrive {
  readonly parameters: readonly Parameter[];
}

/**
 * Corrects as many values of a car as its log carries, so that the energies of its segments come out as measured: least squares with what
 * was known before as further measurements. First the slopes of all values tell which the log narrows at all; only those are fitted.
 *
 * The covariance of those is P = (JᵀJ + B⁻¹)⁻¹, with J their slopes and B how far they were thought to be off before; what the others
 * may be off goes into the bands (`considerCovariance`). How far energies may be off is found from what is left of them.
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
  return describeFit(differences, parameters, { active, values, lower }, observations);
}

/** Which of the parameters the log narrows, all of them unknown at once. */
function carriedOf(slopes_J: readonly Float64Array[], parameters: readonly Parameter[], lower: Float64Array) {
  const count = parameters.length;
  const after = covarianceOf(whitenedSlopes(slopes_J, parameters, lower).jacobian, count);
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

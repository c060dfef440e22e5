import { choleskyFactor, choleskySolve } from "./cholesky.ts";

/** A problem of least squares: residuals that are to become small, each already divided by how far it may be off. */
export interface LeastSquaresProblem {
  readonly start: readonly number[];
  /** Writes the residuals at some parameters. */
  readonly residuals: (parameters: Float64Array, into: Float64Array) => void;
  readonly count: number;
  /** Of each parameter, for the differences that the slopes are found by; above zero. */
  readonly sizes: readonly number[];
  readonly low?: readonly number[];
  readonly high?: readonly number[];
  /** The sum of squares is least where a step lowers it by less than this share; 1e-12 where not given. */
  readonly tolerance_ratio?: number;
}

/** Where the sum of squares is least, and how sharply. */
export interface LeastSquaresFit {
  readonly parameters: Float64Array;
  readonly residuals: Float64Array;
  /** Slope of residual i by parameter k at `i * parameters + k`. */
  readonly jacobian: Float64Array;
  readonly sum: number;
  readonly isConverged: boolean;
}

const MOST_STEPS = 200;
const DONE_ratio = 1e-12;
const DIFFERENCE_ratio = 1e-6;

/**
 * The parameters with the least sum of squared residuals, within bounds, by Gauss and Newton's steps, damped by Marquardt's factor on
 * the diagonal where a full step does not help.
 *
 *   (JᵀJ + λ diag JᵀJ) δ = -Jᵀr      [Marquardt1963, eq. 17]
 *
 * Slopes are central differences, so that nothing has to be derived by hand. Priors are residuals like any other.
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { start, residuals, count, sizes, tolerance_ratio = DONE_ratio } = problem;
  const n = start.length;
  let at = within(problem, Float64Array.from(start));
  let found = new Float64Array(count);
  residuals(at, found);
  let sum = squared(found);
  let damping = 1e-3;
  let isConverged = n === 0;
  let slopes = jacobianAt(problem, at, sizes);
  for (let pass = 0; pass < MOST_STEPS && !isConverged; pass++) {
    const { step, isFree } = dampedStep(problem, slopes, found, at, damping);
    const tried = within(
      problem,
      at.map((value, k) => value + step[k]),
    );
    const there = new Float64Array(count);
    residuals(tried, there);
    const next = squared(there);
    const isTiny = tried.every(
      (value, k) => Math.abs(value - at[k]) <= tolerance_ratio * Math.max(Math.abs(value), sizes[k]),
    );
    if (next <= sum) {
      // Slow gains with heavy damping are no end: that is a curved valley.
      isConverged = isTiny || (sum - next <= tolerance_ratio * sum && damping < 1);
      at = tried;
      found = there;
      sum = next;
      slopes = jacobianAt(problem, at, sizes);
      damping = Math.max(1e-14, damping / 10);
    } else {
      isConverged = isTiny || !isFree;
      damping *= 10;
    }
  }
  return { parameters: at, residuals: found, jacobian: slopes, sum, isConverged };
}

/** Covariance of the parameters where the residuals have a spread of one: the inverse of JᵀJ, n by n. */
export function covarianceOf(jacobian: Float64Array, n: number): Float64Array {
  const { normal, scale } = normalOf(jacobian, n);
  choleskyFactor(n, normal);
  const inverse = new Float64Array(n * n);
  for (let k = 0; k < n; k++) {
    const column = new Float64Array(n);
    column[k] = 1;
    choleskySolve(n, normal, column);
    for (let i = 0; i < n; i++) inverse[i * n + k] = column[i] * scale[i] * scale[k];
  }
  return inverse;
}

/** JᵀJ with its diagonal scaled to one, so that parameters of any size are solved for alike. */
function normalOf(jacobian: Float64Array, n: number) {
  const rows = n === 0 ? 0 : jacobian.length / n;
  const normal = new Float64Array(n * n);
  for (let i = 0; i < rows; i++)
    for (let k = 0; k < n; k++)
      for (let l = 0; l <= k; l++) normal[k * n + l] += jacobian[i * n + k] * jacobian[i * n + l];
  const scale = Float64Array.from({ length: n }, (_, k) => 1 / Math.sqrt(Math.max(normal[k * n + k], 1e-300)));
  for (let k = 0; k < n; k++)
    for (let l = 0; l <= k; l++) {
      normal[k * n + l] *= scale[k] * scale[l];
      normal[l * n + k] = normal[k * n + l];
    }
  return { normal, scale };
}

/** One damped step; a parameter at a bound that the step would pass stays there. */
function dampedStep(
  problem: LeastSquaresProblem,
  jacobian: Float64Array,
  residuals: Float64Array,
  at: Float64Array,
  damping: number,
) {
  const n = at.length;
  const { normal, scale } = normalOf(jacobian, n);
  const right = new Float64Array(n);
  for (let i = 0; i < residuals.length; i++) for (let k = 0; k < n; k++) right[k] -= jacobian[i * n + k] * residuals[i];
  const isHeld = Array.from(at, (value, k) =>
    right[k] > 0
      ? value >= (problem.high?.[k] ?? Number.POSITIVE_INFINITY)
      : value <= (problem.low?.[k] ?? Number.NEGATIVE_INFINITY),
  );
  for (let k = 0; k < n; k++) {
    right[k] *= scale[k];
    if (isHeld[k]) {
      right[k] = 0;
      for (let l = 0; l < n; l++) if (l !== k) normal[k * n + l] = normal[l * n + k] = 0;
    }
    normal[k * n + k] *= 1 + damping;
  }
  choleskyFactor(n, normal);
  choleskySolve(n, normal, right);
  return { step: right.map((value, k) => value * scale[k]), isFree: isHeld.some((held) => !held) };
}

function jacobianAt(
  { residuals, count }: LeastSquaresProblem,
  at: Float64Array,
  sizes: readonly number[],
): Float64Array {
  const n = at.length;
  const jacobian = new Float64Array(count * n);
  const [above, below] = [new Float64Array(count), new Float64Array(count)];
  for (let k = 0; k < n; k++) {
    const by = DIFFERENCE_ratio ** (2 / 3) * Math.max(Math.abs(at[k]), sizes[k]);
    const moved = Float64Array.from(at);
    moved[k] = at[k] + by;
    residuals(moved, above);
    moved[k] = at[k] - by;
    residuals(moved, below);
    for (let i = 0; i < count; i++) jacobian[i * n + k] = (above[i] - below[i]) / (2 * by);
  }
  return jacobian;
}

function within({ low, high }: LeastSquaresProblem, parameters: Float64Array): Float64Array {
  return parameters.map((value, k) =>
    Math.min(high?.[k] ?? Number.POSITIVE_INFINITY, Math.max(low?.[k] ?? Number.NEGATIVE_INFINITY, value)),
  );
}

function squared(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return Number.isNaN(sum) ? Number.POSITIVE_INFINITY : sum;
}

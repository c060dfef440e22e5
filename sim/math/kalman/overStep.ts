/** Transition and noise of a linear stochastic differential equation over a step, both n x n and row-major. */
export interface StepMatrices {
  readonly transition: Float64Array;
  readonly noise: Float64Array;
}

/**
 * What dx = A x dt + dw, with w of spectral density D, does over a step of `dt`: x' = F x + e, F = exp(A dt), cov(e) = Q. Both come from one
 * exponential of twice the width [VanLoan1978, eq. 2.1 and theorem 1]:
 *
 *   exp([-A D; 0 A'] dt) = [. G; 0 F'],   Q = F G
 *
 * by Taylor's series of a step halved until it is short, and as many squarings.
 */
export function overStep(n: number, drift: Float64Array, density: Float64Array, dt: number): StepMatrices {
  const m = 2 * n;
  const block = new Float64Array(m * m);
  let most = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      block[i * m + j] = -drift[i * n + j] * dt;
      block[i * m + n + j] = density[i * n + j] * dt;
      block[(n + i) * m + n + j] = drift[j * n + i] * dt;
      most = Math.max(most, Math.abs(drift[i * n + j] * dt), Math.abs(density[i * n + j] * dt));
    }
  }
  const whole = exponential(m, block, Math.max(0, Math.ceil(Math.log2(m * most + 1e-300)) + 4));
  const transition = new Float64Array(n * n);
  const noise = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) transition[i * n + j] = whole[(n + j) * m + n + i];
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let l = 0; l < n; l++) sum += transition[i * n + l] * whole[l * m + n + j];
      noise[i * n + j] = sum;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const mean = 0.5 * (noise[i * n + j] + noise[j * n + i]);
      noise[i * n + j] = mean;
      noise[j * n + i] = mean;
    }
  }
  return { transition, noise };
}

function exponential(m: number, matrix: Float64Array, halvings: number): Float64Array {
  const scaled = matrix.map((each) => each / 2 ** halvings);
  let sum = identity(m);
  let term = identity(m);
  for (let k = 1; k <= 12; k++) {
    term = product(m, term, scaled).map((each) => each / k);
    sum = sum.map((each, i) => each + term[i]);
  }
  for (let k = 0; k < halvings; k++) sum = product(m, sum, sum);
  return sum;
}

function identity(m: number): Float64Array {
  return new Float64Array(m * m).map((_, i) => (i % (m + 1) === 0 ? 1 : 0));
}

function product(m: number, a: Float64Array, b: Float64Array): Float64Array {
  const result = new Float64Array(m * m);
  for (let i = 0; i < m; i++) {
    for (let l = 0; l < m; l++) {
      const factor = a[i * m + l];
      if (factor === 0) continue;
      for (let j = 0; j < m; j++) result[i * m + j] += factor * b[l * m + j];
    }
  }
  return result;
}

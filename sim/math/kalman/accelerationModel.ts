/**
 * Fills the transition and its noise for a distance, its speed and an acceleration that falls back to zero by chance with the
 * time constant given [Singer1970, eq. 4 to 8], into rows and columns 0 to 2 of matrices of width n:
 *
 *   F = [1 dt (b - 1 + e)/c^2; 0 1 (1 - e)/c; 0 0 e],   c = 1/time constant, b = c dt, e = exp(-b)
 *
 * `spread_mps2` is the standard deviation of the acceleration. For short steps the closed form loses its digits to
 * cancellation, so below b = 0.02 the first term of its series stands in (relative error below 1 %).
 */
export function accelerationModel(
  dt_s: number,
  spread_mps2: number,
  timeConstant_s: number,
  n: number,
  transition: Float64Array,
  noise: Float64Array,
): void {
  const c = 1 / timeConstant_s;
  const b = c * dt_s;
  const e = Math.exp(-b);
  const isShort = b < 0.02;
  transition[0] = 1;
  transition[1] = dt_s;
  transition[2] = isShort ? 0.5 * dt_s * dt_s : (b - 1 + e) / (c * c);
  transition[n + 1] = 1;
  transition[n + 2] = isShort ? dt_s : (1 - e) / c;
  transition[2 * n + 2] = e;

  const v = spread_mps2 * spread_mps2;
  let q11: number;
  let q12: number;
  let q13: number;
  let q22: number;
  let q23: number;
  if (isShort) {
    const q = 2 * c * v;
    q11 = (q * dt_s ** 5) / 20;
    q12 = (q * dt_s ** 4) / 8;
    q13 = (q * dt_s ** 3) / 6;
    q22 = (q * dt_s ** 3) / 3;
    q23 = (q * dt_s ** 2) / 2;
  } else {
    const e2 = e * e;
    q11 = (v / c ** 4) * (1 - e2 + 2 * b + (2 * b ** 3) / 3 - 2 * b * b - 4 * b * e);
    q12 = (v / c ** 3) * (e2 + 1 - 2 * e + 2 * b * e - 2 * b + b * b);
    q13 = (v / c ** 2) * (1 - e2 - 2 * b * e);
    q22 = (v / c ** 2) * (4 * e - 3 - e2 + 2 * b);
    q23 = (v / c) * (e2 + 1 - 2 * e);
  }
  noise[0] = q11;
  noise[1] = q12;
  noise[n] = q12;
  noise[2] = q13;
  noise[2 * n] = q13;
  noise[n + 1] = q22;
  noise[n + 2] = q23;
  noise[2 * n + 1] = q23;
  noise[2 * n + 2] = v * (1 - e * e);
}

/**
 * Values at `at` of the monotone cubic through (x, y): smooth, and never beyond two neighbouring points.
 * Harmonic-mean slopes inside, one-sided three-point slopes at the ends  [FritschButland1984, eq. 4].
 * `x` rises strictly; `at` outside it takes the end value. Two points give a straight line.
 */
export function monotoneCubic(x: readonly number[], y: readonly number[], at: Float64Array): Float64Array {
  const slopes = pointSlopes(x, y);
  const out = new Float64Array(at.length);
  const last = x.length - 1;
  for (let k = 0; k < at.length; k++) {
    if (at[k] <= x[0]) out[k] = y[0];
    else if (at[k] >= x[last]) out[k] = y[last];
    else {
      let i = 0;
      while (x[i + 1] < at[k]) i++;
      const h = x[i + 1] - x[i];
      const u = (at[k] - x[i]) / h;
      // Hermite's basis on the unit interval.
      out[k] =
        (1 + 2 * u) * (1 - u) * (1 - u) * y[i] +
        u * (1 - u) * (1 - u) * h * slopes[i] +
        u * u * (3 - 2 * u) * y[i + 1] +
        u * u * (u - 1) * h * slopes[i + 1];
    }
  }
  return out;
}

function pointSlopes(x: readonly number[], y: readonly number[]): number[] {
  const n = x.length;
  const chord = Array.from({ length: n - 1 }, (_, i) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]));
  if (n === 2) return [chord[0], chord[0]];
  const slopes = new Array<number>(n).fill(0);
  for (let i = 1; i < n - 1; i++) {
    const before = chord[i - 1];
    const after = chord[i];
    if (before * after <= 0) continue; // a turning point stays one
    const left = x[i] - x[i - 1];
    const right = x[i + 1] - x[i];
    const weight = (left + 2 * right) / (3 * (left + right));
    slopes[i] = (before * after) / (weight * after + (1 - weight) * before);
  }
  slopes[0] = endSlope(x[1] - x[0], x[2] - x[1], chord[0], chord[1]);
  slopes[n - 1] = endSlope(x[n - 1] - x[n - 2], x[n - 2] - x[n - 3], chord[n - 2], chord[n - 3]);
  return slopes;
}

/** Three-point slope at an end, held to what keeps the first interval monotone. */
function endSlope(near: number, far: number, nearChord: number, farChord: number): number {
  const slope = ((2 * near + far) * nearChord - near * farChord) / (near + far);
  if (slope * nearChord <= 0) return 0;
  if (nearChord * farChord <= 0 && Math.abs(slope) > 3 * Math.abs(nearChord)) return 3 * nearChord;
  return slope;
}

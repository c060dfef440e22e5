/** How calm a calm moment may be held to be, as a share of the whole log's spread: nobody drives without any acceleration. */
const CALMEST_frac = 0.4;
/** Smoothing takes some of every push away; this gives it back. Both shares are rules of our own, and neither is sharp. */
const GIVEN_BACK_ratio = 1.2;

/**
 * Standard deviation of acceleration at every moment, in m/s2, from accelerations already smoothed once. Driving is long calm
 * segments and short pushes, and one spread for both leaves noise in the first, which counts as energy, and takes the
 * tops off the second:
 *
 *   s_i = sqrt((0.4 s)^2 + 1.2^2 mean(a_k^2)), the mean over moments within `reach_s` of moment i
 *
 * `spread_mps2` (s) is that of the whole log; `acceleration_mps2(k)` gives a_k. Common practice in smoothing of
 * manoeuvres, no source for these numbers.
 */
export function accelerationNoise_mps2(
  time_s: Float64Array,
  acceleration_mps2: (k: number) => number,
  spread_mps2: number,
  reach_s: number,
): Float64Array {
  const n = time_s.length;
  const sum = new Float64Array(n + 1);
  for (let k = 0; k < n; k++) {
    sum[k + 1] = sum[k] + acceleration_mps2(k) ** 2;
  }
  const calmest = (CALMEST_frac * spread_mps2) ** 2;
  const result = new Float64Array(n);
  let from = 0;
  let to = 0;
  for (let k = 0; k < n; k++) {
    while (time_s[k] - time_s[from] > reach_s) {
      from++;
    }
    while (to < n && time_s[to] - time_s[k] <= reach_s) {
      to++;
    }
    const near = (sum[to] - sum[from]) / (to - from);
    result[k] = Math.sqrt(calmest + GIVEN_BACK_ratio ** 2 * near);
  }
  return result;
}

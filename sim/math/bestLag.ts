/** A series to be laid on another: values at times of their own. Rising times, no NaN. */
export interface Samples {
  readonly time_s: Float64Array;
  readonly values: Float64Array;
}

/** Where two series go together best. */
export interface Lag {
  /** To be added to the times of the samples. */
  readonly lag_s: number;
  /** Correlation there, -1 to 1; 0 where they never meet. */
  readonly correlation: number;
  /** The strongest correlation at lags further away than a peak is wide. */
  readonly runnerUp: number;
}

/** Lags nearer than this to the best belong to its peak. Assumed: drives change what they do every half minute. */
const PEAK_s = 30;

/**
 * The lag at which samples correlate most with a series, of either sign, among lags from `from_s` to `to_s`: first in steps of
 * `step_s`, then finer around the best, to a tenth of a second, then where the peak is as high on either side (`middleOfPeak_s`). Only lags
 * at which at least `least` samples meet the series count.
 *
 *   r = Σ (a - ā)(b - b̄) / √(Σ (a - ā)² Σ (b - b̄)²)      (Pearson's coefficient)
 */
export function bestLag(
  series: Samples,
  samples: Samples,
  search: { readonly from_s: number; readonly to_s: number; readonly step_s: number; readonly least: number },
): Lag {
  const { from_s, to_s, step_s, least } = search;
  const steps = Math.max(0, Math.round((to_s - from_s) / step_s));
  const found = Float64Array.from({ length: steps + 1 }, (_, k) =>
    correlationAt(series, samples, from_s + k * step_s, least),
  );
  let best = 0;
  for (let k = 1; k <= steps; k++) if (Math.abs(found[k]) > Math.abs(found[best])) best = k;
  let runnerUp = 0;
  for (let k = 0; k <= steps; k++)
    if (Math.abs(k - best) * step_s > PEAK_s && Math.abs(found[k]) > Math.abs(runnerUp)) runnerUp = found[k];
  let lag_s = from_s + best * step_s;
  let correlation = found[best];
  for (let finer_s = step_s / 2; finer_s >= 0.05; finer_s /= 2)
    for (const tried_s of [lag_s - finer_s, lag_s + finer_s]) {
      const there = correlationAt(series, samples, tried_s, least);
      if (Math.abs(there) > Math.abs(correlation)) [lag_s, correlation] = [tried_s, there];
    }
  return { lag_s: middleOfPeak_s(series, samples, lag_s, least), correlation, runnerUp };
}

/** Noise leaves less than this to be gained by another turn. */
const SETTLED_s = 0.01;
const MOST_TURNS = 8;

/**
 * The lag from which a peak falls alike to either side, a step of the series away. Between its points a series is straight, which smooths its
 * noise: samples of the same rhythm seem to fit best half-way between, by a third of a second off. Lags a whole step apart fall equally far between
 * points, and so are smoothed alike.
 */
function middleOfPeak_s(series: Samples, samples: Samples, near_s: number, least: number): number {
  const n = series.time_s.length;
  const step_s = n > 1 ? (series.time_s[n - 1] - series.time_s[0]) / (n - 1) : 0;
  if (!(step_s > 0 && step_s <= LONGEST_BETWEEN_s)) return near_s;
  const height = (lag_s: number) => Math.abs(correlationAt(series, samples, lag_s, least));
  let lag_s = near_s;
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const [before, here, after] = [height(lag_s - step_s), height(lag_s), height(lag_s + step_s)];
    const bend = before - 2 * here + after;
    if (before === 0 || after === 0 || bend >= 0) return near_s;
    const move_s = (0.5 * step_s * (before - after)) / bend;
    lag_s += move_s;
    if (Math.abs(lag_s - near_s) > step_s) return near_s;
    if (Math.abs(move_s) < SETTLED_s) break;
  }
  return lag_s;
}

/** Correlation of the samples, moved by a lag, with the series between its own points; pairs over its breaks are left out. */
export function correlationAt(series: Samples, samples: Samples, lag_s: number, least: number): number {
  let [n, sumA, sumB, sumAA, sumBB, sumAB] = [0, 0, 0, 0, 0, 0];
  const { time_s, values } = series;
  const last = time_s.length - 1;
  let i = 0;
  for (let k = 0; k < samples.time_s.length; k++) {
    const at_s = samples.time_s[k] + lag_s;
    if (at_s < time_s[0]) continue;
    if (at_s > time_s[last]) break;
    if (i === 0) i = startAt(time_s, at_s);
    while (i < last - 1 && time_s[i + 1] < at_s) i++;
    const width_s = time_s[i + 1] - time_s[i];
    if (width_s > LONGEST_BETWEEN_s) continue;
    const a = values[i] + ((at_s - time_s[i]) / width_s) * (values[i + 1] - values[i]);
    const b = samples.values[k];
    n++;
    sumA += a;
    sumB += b;
    sumAA += a * a;
    sumBB += b * b;
    sumAB += a * b;
  }
  const spread = (sumAA - (sumA * sumA) / n) * (sumBB - (sumB * sumB) / n);
  return n >= least && spread > 0 ? (sumAB - (sumA * sumB) / n) / Math.sqrt(spread) : 0;
}

/** Between points of a series further apart than this nothing is known. */
const LONGEST_BETWEEN_s = 3;

/** The interval of rising times that holds a time, by halving. */
function startAt(time_s: Float64Array, at_s: number): number {
  let low = 0;
  let high = time_s.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (time_s[middle] <= at_s) low = middle;
    else high = middle;
  }
  return low;
}

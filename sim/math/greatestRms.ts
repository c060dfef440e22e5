/**
 * The greatest root mean square of a signal over any window of `window_s`, its value constant over each interval: value[i] from
 * time_s[i - 1] to time_s[i], value[0] unused.
 *
 *   max over t of √(1/w ∫ x² from t to t + w)
 *
 * The integral is made of straight lines in t, so that it is greatest where one end of the window lies on a sample. A window of no
 * length gives the greatest absolute value. One that is longer than the signal gives that of the signal driven again and again.
 */
export function greatestRms(time_s: ArrayLike<number>, value: ArrayLike<number>, window_s: number): number {
  const count = time_s.length;
  const length_s = count > 1 ? time_s[count - 1] - time_s[0] : 0;
  if (!(length_s > 0)) return 0;
  if (window_s <= 0) {
    let most = 0;
    for (let i = 1; i < count; i++) most = Math.max(most, Math.abs(value[i]));
    return most;
  }
  const sum = new Float64Array(count); // of x² dt up to each sample
  for (let i = 1; i < count; i++) sum[i] = sum[i - 1] + value[i] * value[i] * (time_s[i] - time_s[i - 1]);
  const whole = sum[count - 1];
  // What a window holds of whole passes does not hang on where it begins.
  const passes = Math.floor(window_s / length_s);
  const rest_s = window_s - passes * length_s;
  const isRepeated = passes > 0;
  let most = 0;
  const consider = (from_s: number, at: Cursor) => {
    const to_s = from_s + rest_s;
    const beyond_s = to_s - length_s;
    if (beyond_s > 0 && !isRepeated) return;
    const end = beyond_s > 0 ? whole + sumAt(time_s, sum, beyond_s, at) : sumAt(time_s, sum, to_s, at);
    most = Math.max(most, end - sumAt(time_s, sum, from_s, at));
  };
  const cursor = { row: 1 };
  for (let i = 0; i < count; i++) {
    const at_s = time_s[i] - time_s[0];
    consider(at_s, cursor);
    const before_s = at_s - rest_s;
    if (before_s >= 0) consider(before_s, cursor);
    else if (isRepeated) consider(before_s + length_s, cursor);
  }
  return Math.sqrt((passes * whole + most) / window_s);
}

interface Cursor {
  row: number;
}

/** The integral from the start up to a time after it; looks from where it looked last, since times mostly go on. */
function sumAt(time_s: ArrayLike<number>, sum: Float64Array, at_s: number, cursor: Cursor): number {
  const wanted_s = time_s[0] + at_s;
  const last = sum.length - 1;
  let low = 0;
  let high = last;
  if (time_s[cursor.row] <= wanted_s) low = cursor.row;
  else high = cursor.row;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (time_s[middle] <= wanted_s) low = middle;
    else high = middle;
  }
  cursor.row = Math.max(1, low);
  const width_s = time_s[high] - time_s[low];
  if (width_s <= 0) return sum[high];
  const share = Math.min(1, Math.max(0, (wanted_s - time_s[low]) / width_s));
  return sum[low] + share * (sum[high] - sum[low]);
}

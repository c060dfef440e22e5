import { distanceAlong_m } from "./distanceAlong.ts";
import type { Trace } from "./trace.ts";

/** Samples nearer together than this are merged: nothing a road asks of a car is over sooner (assumed). */
const FINEST_s = 0.1;
const ROUNDING_s = 1e-9;

/**
 * The same road with samples no nearer than 0.1 s, so that a recording at 1000 Hz is not driven in millions of steps. A sample that
 * stands for dropped neighbours gets the mean speed around it (between the half-ways to the next ones, the same time on both sides),
 * so that noise is averaged and not picked from; first and last sample, and those with nothing dropped beside them, stay as they are.
 */
export function mergeFineSamples(trace: Trace): Trace {
  const { time_s, speed_mps } = trace;
  const last = time_s.length - 1;
  const kept = [0];
  for (let i = 1; i < last; i++) {
    if (time_s[i] - time_s[kept[kept.length - 1]] >= FINEST_s - ROUNDING_s) kept.push(i);
  }
  if (kept.length > 1 && time_s[last] - time_s[kept[kept.length - 1]] < FINEST_s - ROUNDING_s) kept.pop();
  kept.push(last);
  if (kept.length === time_s.length) return trace;

  const along_m = distanceAlong_m(time_s, speed_mps);
  const merged_mps = kept.map((i, k) => {
    const before = kept[k - 1];
    const after = kept[k + 1];
    if (before === undefined || after === undefined || after - before === 2) return speed_mps[i];
    const half_s = 0.5 * Math.min(time_s[i] - time_s[before], time_s[after] - time_s[i]);
    const from_m = placeAt_m(trace, along_m, time_s[i] - half_s, before);
    const to_m = placeAt_m(trace, along_m, time_s[i] + half_s, i);
    return Math.max(0, to_m - from_m) / (2 * half_s);
  });
  return {
    ...trace,
    time_s: Float64Array.from(kept, (i) => time_s[i]),
    speed_mps: Float64Array.from(merged_mps),
  };
}

/** Distance driven at a time, speed by straight lines between the samples; searched forward from a sample before it. */
function placeAt_m({ time_s, speed_mps }: Trace, along_m: Float64Array, at_s: number, from: number): number {
  let i = from;
  while (time_s[i + 1] <= at_s) i++;
  const into_s = at_s - time_s[i];
  const rise_mps2 = (speed_mps[i + 1] - speed_mps[i]) / (time_s[i + 1] - time_s[i]);
  return along_m[i] + into_s * (speed_mps[i] + 0.5 * rise_mps2 * into_s);
}

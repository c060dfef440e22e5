import type { Trace } from "./trace.ts";

/**
 * The same trace at even steps: rows at 0, step, twice the step and so on, speed by a straight line between the samples,
 * and the last sample kept at its own time, so that the last step may be shorter. Height stays as it is, since it hangs on
 * distance. A step longer than the samples' cuts corners: distance and energy then differ from the trace's own.
 * A step that is not above 0 is a mistake of the caller.
 */
export function resample(trace: Trace, step_s: number): Trace {
  if (!(step_s > 0)) throw new Error(`a trace cannot be resampled at steps of ${step_s} s`);
  const { time_s, speed_mps } = trace;
  const last = time_s.length - 1;
  const duration_s = time_s[last];
  // A multiple of the step that falls on the end but for rounding is the end itself.
  const steps = Math.max(1, Math.ceil(duration_s / step_s - 1e-9));
  const even_s = new Float64Array(steps + 1);
  const even_mps = new Float64Array(steps + 1);
  let i = 0;
  for (let k = 0; k < steps; k++) {
    const row_s = k * step_s;
    while (time_s[i + 1] <= row_s) i++;
    const share_frac = (row_s - time_s[i]) / (time_s[i + 1] - time_s[i]);
    even_s[k] = row_s;
    even_mps[k] = speed_mps[i] + share_frac * (speed_mps[i + 1] - speed_mps[i]);
  }
  even_s[steps] = duration_s;
  even_mps[steps] = speed_mps[last];
  return { ...trace, time_s: even_s, speed_mps: even_mps };
}

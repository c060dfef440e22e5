import type { Channels } from "../../step/channels.ts";
import type { Model } from "../../step/model.ts";
import { recorded } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";

/** What a road asks of a pack at its terminals. */
export interface RoadPower {
  /** Greatest over one sample of the road, over any ten seconds, and root mean square over the whole of it. */
  readonly peak_W: number;
  readonly tenSeconds_W: number;
  readonly rms_W: number;
}

/** What a road asks of the pack of a car that is not held back on it. */
export function roadPower(model: Model, trace: Trace): RoadPower {
  return powerOf(recorded(model, trace));
}

/** Ten seconds: for so long modules print a peak current. */
const WINDOW_s = 10;

/** Peak, greatest mean over ten seconds and root mean square of what a recorded run drew. */
export function powerOf({ length, time_s, battery_W }: Channels): RoadPower {
  let [peak_W, tenSeconds_W, square] = [0, 0, 0];
  // Energy up to each row, so that the mean over a window is a difference; the window begins at the last row that is ten seconds back.
  const energy_J = new Float64Array(length);
  let from = 0;
  for (let i = 1; i < length; i++) {
    const dt_s = time_s[i] - time_s[i - 1];
    energy_J[i] = energy_J[i - 1] + battery_W[i] * dt_s;
    peak_W = Math.max(peak_W, battery_W[i]);
    square += battery_W[i] * battery_W[i] * dt_s;
    while (time_s[i] - time_s[from + 1] >= WINDOW_s) from++;
    const span_s = time_s[i] - time_s[from];
    if (span_s >= WINDOW_s) tenSeconds_W = Math.max(tenSeconds_W, (energy_J[i] - energy_J[from]) / span_s);
  }
  const whole_s = length > 1 ? time_s[length - 1] - time_s[0] : 0;
  return { peak_W, tenSeconds_W, rms_W: whole_s > 0 ? Math.sqrt(square / whole_s) : 0 };
}

import { BEHIND_mps, type Channels } from "../../../../sim/index.ts";

export interface Span {
  /** Ends in the column's unit. */
  readonly from: number;
  readonly to: number;
  /** Seconds behind within it. */
  readonly time_s: number;
}

/**
 * Spans of `column` (time or distance, rising) in which the car is more than 2 km/h below its target, in order.
 * Those nearer to each other than `gap` are shown as one.
 */
export function spansBehind(channels: Channels, gap: number, column: Float64Array): Span[] {
  const found: { from: number; to: number; time_s: number }[] = [];
  for (let i = 1; i < channels.length; i++) {
    if ((channels.target_mps[i] as number) - (channels.speed_mps[i] as number) <= BEHIND_mps) continue;
    const from = column[i - 1] as number;
    const to = column[i] as number;
    const time_s = (channels.time_s[i] as number) - (channels.time_s[i - 1] as number);
    const last = found.at(-1);
    if (last && from - last.to <= gap) {
      last.to = to;
      last.time_s += time_s;
    } else {
      found.push({ from, to, time_s });
    }
  }
  return found;
}

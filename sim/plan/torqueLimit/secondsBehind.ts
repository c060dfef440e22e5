import type { Channels } from "../../step/channels.ts";

/**
 * Seconds that a run is behind its road at the end: what it missed of each row, at the mean speed that the road has there,
 *
 *   Σ max(0, Δt - Δs / v_wanted)
 *
 * A car that rolls on where the road is slower gains nothing by it.
 */
export function secondsBehind({ length, time_s, target_mps, distance_m }: Channels): number {
  let behind_s = 0;
  for (let i = 1; i < length; i++) {
    const wanted_mps = 0.5 * (target_mps[i - 1] + target_mps[i]);
    if (wanted_mps === 0) continue;
    behind_s += Math.max(0, time_s[i] - time_s[i - 1] - (distance_m[i] - distance_m[i - 1]) / wanted_mps);
  }
  return behind_s < 1e-9 ? 0 : behind_s;
}

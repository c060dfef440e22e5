import type { PackLog } from "../../trace/packLog.ts";
import type { LinedUp } from "./lineUp.ts";
import type { PackSamples } from "./packSamples.ts";

/**
 * What else the log has while the car drove: the highest motor speed, spikes left out, and the share of charge used by its own count. Each is
 * absent where the log has no such column.
 */
export function logExtras(
  { motor_radps, soc_frac, time_s }: Pick<PackLog, "motor_radps" | "soc_frac" | "time_s">,
  samples: Pick<PackSamples, "time_s" | "count">,
  { offset_s }: Pick<LinedUp, "offset_s">,
): { readonly motor_radps?: number; readonly socUsed_frac?: number } {
  const [from_s, to_s] = [samples.time_s[0], samples.time_s[samples.count - 1]];
  const isIn = (i: number) => time_s[i] + offset_s >= from_s && time_s[i] + offset_s <= to_s;
  const inside = (column: Float64Array | undefined) =>
    column?.filter((value, i) => isIn(i) && !Number.isNaN(value)) ?? [];
  const speeds = inside(motor_radps).map(Math.abs).sort();
  const charges = inside(soc_frac);
  return {
    ...(speeds.length > 0 && { motor_radps: speeds[Math.floor(0.998 * (speeds.length - 1))] }),
    ...(charges.length > 1 && { socUsed_frac: charges[0] - charges[charges.length - 1] }),
  };
}

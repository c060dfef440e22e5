import type { Job } from "../../shared/job/job.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { WH_PER_KWH } from "../../shared/units.ts";
import type { Candidate } from "../../sim/index.ts";

/** A household socket as it is used for hours on end. */
export interface Socket {
  readonly power_W: number;
  readonly words: string;
}

/**
 * The socket of the reader's country. 10 A where 13 or 16 A are fused, as long hours heat old sockets; 12 A on a 15 A circuit, four fifths
 * of it [NEC, 625.41]. Common practice, no source for the 10 A.
 */
export function householdSocket(units: UnitHabit): Socket {
  return units === "american"
    ? { power_W: 120 * 12, words: "120 V, 12 A" }
    : { power_W: 230 * 10, words: "230 V, 10 A" };
}

/** Hours at a socket for the usual day and from empty to full, to a quarter. Energy at the wall over the socket's power; the slow last part is not in it. */
export function chargeHours(
  { wall_Whpkm, battery_Whpkm, pack, distance_km }: Candidate,
  { usualDay_km }: Pick<Job, "usualDay_km">,
  { power_W }: Socket,
): { readonly usualDay: string; readonly emptyToFull: string } | undefined {
  if (distance_km <= 0 || battery_Whpkm <= 0) return undefined;
  const full_Wh = (pack.usable_kWh * WH_PER_KWH * wall_Whpkm) / battery_Whpkm;
  const day_Wh = Math.min(wall_Whpkm * usualDay_km, full_Wh);
  return { usualDay: quarters(day_Wh / power_W), emptyToFull: quarters(full_Wh / power_W) };
}

/** Hours to a quarter, never less than one. */
export function quarters(time_h: number): string {
  const whole = Math.max(1, Math.ceil(4 * time_h - 1e-9));
  const part = ["", "¼", "½", "¾"][whole % 4];
  const hours = Math.floor(whole / 4);
  return `${hours === 0 && part !== "" ? "" : hours}${part} h`;
}

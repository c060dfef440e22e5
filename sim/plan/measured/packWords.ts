import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { OHM_PER_MOHM } from "../../../shared/units.ts";
import type { PackFound } from "./packFromLog.ts";

/** What a drive shows of the pack: its capacity and resistance against the job's, and what is allowed for when it is old. */
export function packWords(
  { resistance_ohm, predicted_ohm, capacity_Ah, predicted_Ah, used_frac }: PackFound,
  aged_frac: number,
): Message[] {
  return [
    capacity_Ah
      ? message`The pack holds ${q("charge", capacity_Ah.value)} (${q("charge", capacity_Ah.low)} to ${q("charge", capacity_Ah.high)}) by its volts over this drive, ${q("charge", predicted_Ah)} in the job: ${q("fraction", capacity_Ah.value / predicted_Ah, 2)} of it. ${agedWords(capacity_Ah.value / predicted_Ah, capacity_Ah.high / predicted_Ah, aged_frac)}`
      : message`This drive used ${q("fraction", Math.max(0, used_frac), 2)} of the charge and its volts do not tell the capacity: a log from nearly full to nearly empty would.`,
    resistance_ohm
      ? message`The pack’s resistance is ${q("resistance", mohm(resistance_ohm.value))} (${q("resistance", mohm(resistance_ohm.low))} to ${q("resistance", mohm(resistance_ohm.high))}) by its steps, ${q("resistance", mohm(predicted_ohm))} in the job${resistanceVerdict(resistance_ohm, predicted_ohm)}.`
      : message`Volts and amps do not step together often enough to show the pack’s resistance.`,
  ];
}

function mohm(resistance_ohm: number): number {
  return resistance_ohm / OHM_PER_MOHM;
}

function agedWords(left_frac: number, high_frac: number, aged_frac: number): Message {
  if (left_frac >= aged_frac) return message`At ten years the job allows for ${q("fraction", aged_frac)}.`;
  const sure = high_frac < aged_frac ? "That is below" : "That may be below";
  return message`${sure} what the job allows for at ten years, ${q("fraction", aged_frac)}: test the modules one by one.`;
}

function resistanceVerdict(
  { low, high }: { readonly low: number; readonly high: number },
  predicted_ohm: number,
): string {
  if (low > 1.1 * predicted_ohm)
    return ": more than that; cold cells, or a poor joint (feel every lug after a hard drive)";
  if (high < 0.9 * predicted_ohm) return ": less than that";
  return "";
}

import type { Job } from "../../../shared/job/job.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { rangeOn } from "../going/range.ts";
import { type AgedPack, agedAfter, packUse } from "../years/ageing.ts";
import type { PackFound } from "./packFromLog.ts";

/** What published laws of ageing leave of a job's pack after so many `years` of the job's days on a road. */
export function agedByLaws(job: Job, packIndex: number, road: Trace, years: number): AgedPack {
  const pack = job.packs[packIndex];
  const range_km = rangeOn(prepare(job, pack), road).distance_m / M_PER_KM;
  const mean_kmh = characteristics(road).mean_mps / MPS_PER_KMH;
  return agedAfter(job, pack, packUse(job, pack, range_km, mean_kmh), years);
}

/**
 * The yearly look at a pack: the capacity that a drive shows of it against what the laws of `agedByLaws` leave by now. Nothing where the
 * drive does not show it.
 */
export function serviceWords(
  { capacity_Ah, predicted_Ah }: Pick<PackFound, "capacity_Ah" | "predicted_Ah">,
  { years, capacity_frac: laws }: Pick<AgedPack, "years" | "capacity_frac">,
): Message[] {
  if (!capacity_Ah) return [];
  const share = (charge_Ah: number) => q("fraction", charge_Ah / predicted_Ah, 2);
  const shown = message`After ${years === 1 ? "a year" : `${formatNumber(years)} years`} the published laws of ageing leave ${q("fraction", laws.low, 2)} to ${q("fraction", laws.high, 2)} of this pack as it is used; the log shows ${share(capacity_Ah.low)} to ${share(capacity_Ah.high)}`;
  if (capacity_Ah.high < laws.low * predicted_Ah)
    return [
      message`${shown}: less than they do. Test the modules one by one, and look for what keeps the pack warm or full.`,
    ];
  if (capacity_Ah.low > laws.high * predicted_Ah) return [message`${shown}: more than they do.`];
  return [message`${shown}: as expected.`];
}

import type { Job } from "../../../shared/job/job.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { C_PER_AH, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import type { PackModel } from "../../battery/packModel.ts";
import type { ChargeSetting } from "./chargeCurrent.ts";
import { chargerFeed, type Feed } from "./chargerFeed.ts";

/** What of a job a charge hangs on. */
export type ChargingJob = Pick<Job, "module" | "charger" | "accessories" | "environment">;

/** Current at which a charge ends, over the capacity in ampere-hours, where the charger's own is not known. Common practice, no source. */
const TAIL_ratio = 1 / 20;

/** A pack at a supply, ready to charge, with the temperature of its cells at the start. */
export interface ReadyToCharge extends ChargeSetting {
  readonly feed: Feed;
  readonly start_K: number;
}

/** A job's prepared pack at a supply with the job's charger. The set voltage is the cells' highest. */
export function chargeSetting(job: ChargingJob, pack: PackModel, supply: Supply): ReadyToCharge {
  const { charger, accessories, environment } = job;
  return {
    pack,
    feed: chargerFeed(supply, charger),
    set_V: pack.max_V,
    tail_A: charger.tail_A ?? (pack.capacity_C / C_PER_AH) * TAIL_ratio,
    carDraw_W: charger.carDraw_W ?? accessories.standing_W / accessories.dcdcEfficiency_frac,
    ambient_K: environment.temperature_degC + ZERO_CELSIUS_K,
    start_K: (environment.pack_degC ?? environment.temperature_degC) + ZERO_CELSIUS_K,
  };
}

/** Why a pack is not charged at a supply, where it is not; no hours then stand beside it. */
export function chargeStop(setting: ReadyToCharge, job: ChargingJob): Message | undefined {
  const { pack, start_K } = setting;
  const never = neverCharged(setting, job);
  if (never) return never;
  if (start_K <= pack.coldChargeNone_K)
    return message`The cells are at ${degrees(start_K)} and take no charge at or below ${degrees(pack.coldChargeNone_K)}: warm the pack first.`;
  if (start_K >= pack.heat.derateTo_K)
    return message`The cells are at ${degrees(start_K)} and take no charge from ${degrees(pack.heat.derateTo_K)} on: let the pack cool first.`;
  return undefined;
}

/** Why a pack is not charged at a supply whatever its temperature. */
export function neverCharged(
  { pack, feed, carDraw_W }: Pick<ReadyToCharge, "pack" | "feed" | "carDraw_W">,
  { charger }: Pick<ChargingJob, "charger">,
): Message | undefined {
  if (charger.max_V !== undefined && charger.max_V < pack.max_V)
    return message`The charger goes to ${q("voltage", charger.max_V)} and this pack has ${q("voltage", pack.max_V)} when full: it is never charged full. Use a charger of a higher voltage, or fewer modules in series.`;
  if (feed.power_W <= carDraw_W)
    return message`The charger gives ${q("accessoryPower", feed.power_W)} here and the car itself draws ${q("accessoryPower", carDraw_W)}: nothing reaches the pack.`;
  return undefined;
}

function degrees(temperature_K: number) {
  return q("temperature", temperature_K - ZERO_CELSIUS_K);
}

import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import { S_PER_H } from "../../../shared/units.ts";
import { preparePack } from "../../battery/preparePack.ts";
import { type ChargePoint, chargePoint } from "./chargeCurrent.ts";
import { type Charge, chargePack } from "./chargePack.ts";
import type { Feed } from "./chargerFeed.ts";
import { type ChargingJob, chargeSetting, chargeStop, type ReadyToCharge } from "./chargeSetting.ts";
import { type Night, nightAt } from "./tariff.ts";
import { usualSocket } from "./usualSocket.ts";

/** What a pack takes at a supply when it is empty, whatever is driven. */
export type ChargeFromEmpty = {
  readonly pack: Pack;
  readonly supply: Supply;
  readonly setting: ReadyToCharge;
} & (
  | {
      /** Why it is not charged there. */
      readonly stop: Message;
      readonly full?: never;
      readonly limit?: never;
      readonly night?: never;
      readonly inNight?: never;
    }
  | {
      readonly stop?: never;
      readonly full: Charge;
      /** What sets the pace in the middle of the charge. */
      readonly limit: Feed["limit"] | "charger" | "cells";
      /** Where the supply has cheap hours: those, and the charge within them. */
      readonly night?: Night | undefined;
      readonly inNight?: Charge | undefined;
    }
);

/** What of a job its charges from empty hang on. */
export type FromEmptyJob = ChargingJob & Pick<Job, "packs" | "supplies" | "units">;

/** What sets the pace where a point of the charge says more than that the power does. */
const paceBy: Readonly<Record<ChargePoint["limit"], "charger" | "cells" | undefined>> = {
  power: undefined,
  current: "charger",
  cells: "cells",
  voltage: "cells",
};

/** The supplies of a job; a usual household socket where none is entered. */
export function suppliesOf({ supplies, units }: Pick<Job, "supplies" | "units">): readonly Supply[] {
  return supplies.length === 0 ? [usualSocket(units)] : supplies;
}

/** Every pack of a job charged from empty at each of its supplies: by pack in the order of the job, then by supply. */
export function chargesFromEmpty(job: FromEmptyJob): readonly (readonly ChargeFromEmpty[])[] {
  const supplies = suppliesOf(job);
  return job.packs.map((pack) => {
    const model = preparePack(pack, job.module);
    return supplies.map((supply) => ({ pack, supply, ...fromEmpty(chargeSetting(job, model, supply), supply, job) }));
  });
}

function fromEmpty(setting: ReadyToCharge, supply: Supply, job: ChargingJob) {
  const stop = chargeStop(setting, job);
  if (stop) return { setting, stop };
  const { floor_frac, ceiling_frac } = setting.pack;
  const full = chargePack(setting, floor_frac, setting.start_K);
  if (full.end === "stuck") {
    const stuck: Message = ["The charge does not get on: the cells take hardly any current."];
    return { setting, stop: stuck };
  }
  const night = nightAt(supply);
  const inNight = night && chargePack(setting, floor_frac, setting.start_K, night.hours_h * S_PER_H);
  const middle = chargePoint(setting, (floor_frac + ceiling_frac) / 2, setting.start_K);
  return { setting, full, limit: paceBy[middle.limit] ?? setting.feed.limit, night, inNight };
}

import type { Job } from "../../../shared/job/job.ts";
import { quarterHours } from "../../../shared/quantity/quarterHours.ts";
import type { ChargeFigures, ChargeRow } from "../../../sim/index.ts";

/** Hours of a charge in words; a day beyond the pack is the whole pack. */
export function hoursCell(figures: ChargeFigures | undefined): string {
  if (figures === undefined) return "–";
  const isWhole = "isMoreThanPack" in figures && figures.isMoreThanPack === true;
  return `${quarterHours(figures.time_h)}${isWhole ? " (all)" : ""}`;
}

/** What a charge costs, in the job's currency where it has one. */
export function costWords(cost: number | undefined, currency: string | undefined): string {
  if (cost === undefined) return "–";
  return currency === undefined || currency === "" ? cost.toFixed(2) : `${cost.toFixed(2)} ${currency}`;
}

/** What sets the pace, and so what another supply would change. */
export function paceWords({ limit }: ChargeRow, { charger }: Pick<Job, "charger">): string {
  if (limit === "charger") return "The charger sets the pace: a bigger supply changes nothing.";
  if (limit === "cells") return "The cells set the pace: neither a bigger supply nor a bigger charger changes it.";
  if (limit === undefined) return "";
  const most = charger.power_kW === undefined ? "" : `, up to the charger’s ${charger.power_kW} kW`;
  return `The supply sets the pace: a bigger one shortens it${most}.`;
}

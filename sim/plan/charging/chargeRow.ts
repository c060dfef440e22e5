import type { Job } from "../../../shared/job/job.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import { J_PER_KWH, M_PER_KM, S_PER_H } from "../../../shared/units.ts";
import type { Candidate } from "../driveReport.ts";
import type { ChargeFromEmpty } from "./chargeFromEmpty.ts";
import { type Charge, chargePack } from "./chargePack.ts";
import type { ChargingJob } from "./chargeSetting.ts";
import { chargeBefore_frac, perMetre_J } from "./dayEnergy.ts";
import { costOf, type Night } from "./tariff.ts";

/** One charge in the units people speak of it. */
export interface ChargeFigures {
  readonly time_h: number;
  /** Of that, at constant voltage with the current falling. */
  readonly taper_h: number;
  readonly wall_kWh: number;
  /** Into the cells. */
  readonly stored_kWh: number;
  /** In the job's currency. */
  readonly cost?: number;
  readonly course: Charge["course"];
}

/** What a day's driving takes to put back. */
export interface DayRefill extends ChargeFigures {
  /** State of charge on coming home. */
  readonly from_frac: number;
  /** The day takes more than the pack holds: this is the whole pack. */
  readonly isMoreThanPack: boolean;
}

/** One pack at one supply. */
export interface ChargeRow {
  readonly supply: string;
  readonly pack: string;
  /** Why it is not charged there; nothing else is then said. */
  readonly stop?: Message;
  readonly emptyToFull?: ChargeFigures;
  /** What sets the pace in the middle of the charge. */
  readonly limit?: "supply" | "charger" | "cells";
  /** Nothing for a car that does not drive its road. */
  readonly usualDay?: DayRefill;
  readonly winterDay?: DayRefill;
  /** From empty, within the hours that the night has. */
  readonly night?: ChargeFigures & Night & { readonly gives_km?: number; readonly isFull: boolean };
}

/** What of a job a row hangs on, beside its supplies. */
export type RowJob = ChargingJob & Pick<Job, "usualDay_km" | "allowance">;

/** The charges of one pack at one supply, from the pack itself and from what its drive took. */
export function chargeRow(job: RowJob, fromEmpty: ChargeFromEmpty, candidate: Candidate | undefined): ChargeRow {
  const { pack, supply, setting } = fromEmpty;
  const base = { supply: supply.name, pack: pack.name };
  if (fromEmpty.stop) return { ...base, stop: fromEmpty.stop };
  const { full, limit, night, inNight } = fromEmpty;
  const { floor_frac } = setting.pack;
  const figures = (charge: Charge) => figuresOf(charge, supply);
  const each_J = candidate && perMetre_J(candidate);
  const refill = (share: number, range_km = Number.POSITIVE_INFINITY): DayRefill | undefined => {
    if (each_J === undefined) return undefined;
    // What the cold keeps back is in the range, and is not drawn.
    const from_frac =
      range_km < job.usualDay_km
        ? floor_frac
        : chargeBefore_frac(setting.pack, each_J * job.usualDay_km * M_PER_KM * share);
    const charge = from_frac === floor_frac ? full : chargePack(setting, from_frac, setting.start_K);
    return { ...figures(charge), from_frac, isMoreThanPack: from_frac === floor_frac };
  };
  const [usualDay, winterDay] = [
    refill(1),
    candidate && refill(winterEnergy_ratio(job, candidate), candidate.conditions?.winter?.range_km),
  ];
  return {
    ...base,
    emptyToFull: figures(full),
    limit,
    ...(usualDay && { usualDay }),
    ...(winterDay && { winterDay }),
    ...(night &&
      inNight && {
        night: {
          ...figures(inNight),
          ...night,
          isFull: inNight.end === "full",
          ...(each_J !== undefined && { gives_km: inNight.stored_J / each_J / M_PER_KM }),
        },
      }),
  };
}

/** Energy of a winter's kilometre over today's: as driven, or by the allowance. */
export function winterEnergy_ratio({ allowance }: Pick<Job, "allowance">, candidate: Candidate): number {
  const winter_J = candidate.conditions?.winter?.perMetre_J;
  const today_J = perMetre_J(candidate);
  return winter_J !== undefined && today_J !== undefined ? winter_J / today_J : allowance.winter_ratio;
}

function figuresOf(charge: Charge, supply: Supply): ChargeFigures {
  const cost = costOf(charge, supply);
  return {
    time_h: charge.time_s / S_PER_H,
    taper_h: charge.taper_s / S_PER_H,
    wall_kWh: charge.wall_J / J_PER_KWH,
    stored_kWh: charge.stored_J / J_PER_KWH,
    ...(cost !== undefined && { cost }),
    course: charge.course,
  };
}

import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { J_PER_WH, M_PER_KM, S_PER_H, W_PER_KW, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { prepareIn } from "../../step/prepare.ts";
import type { Totals } from "../../step/totals.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { driveOn, type Range } from "../going/range.ts";
import { type Condition, fuelPerHour_l, othersOf, wintersOf } from "./condition.ts";

/** One pack driven in one condition: what the answer and its working need of it. */
export interface ConditionDrive {
  readonly name: string;
  readonly range_km: number;
  readonly rangeEnd: Range["end"];
  /** At the terminals over one pass from the ceiling; 0 where the car does not move. */
  readonly battery_Whpkm: number;
  /** Drawn from the cells over that pass, for each metre driven. */
  readonly perMetre_J: number;
  /** What a heater with a thermostat drew over that pass, on average. */
  readonly heater_kW: number;
  /** Share of the road that the car missed in one pass though its pack was not empty. */
  readonly missed_frac: number;
  /** It came to a stand before it had driven the road once, or there and back. */
  readonly isStuck: boolean;
  /** Warmest that the pack became. */
  readonly pack_degC: number;
  /** Litres of the heater's fuel over the way that one charge goes; 0 for an electric one. */
  readonly fuel_l100km: number;
}

/** A pack in every condition of its job beside the usual one. */
export interface ConditionDrives {
  /** Absent where the job knows winter by a factor. */
  readonly winter?: ConditionDrive;
  readonly tenYearsWinter?: ConditionDrive;
  readonly others: readonly ConditionDrive[];
}

/** The drives in conditions of every pack, and the range of each today that they go with. */
export interface InConditions {
  readonly drives: readonly ConditionDrives[];
  readonly today: readonly { readonly range_km: number }[];
}

/**
 * Every pack of a job, or these of them, driven over a road in each of its conditions, totals only. Made ready anew for each: that takes 0.05 ms a pack where
 * the drive takes 2, so its tables are not shared.
 */
export function driveConditions(
  job: Job,
  trace: Trace,
  packIndexes: readonly number[] = job.packs.map((_, i) => i),
): ConditionDrives[] {
  return packIndexes.map((index) => driveInConditions(job, job.packs[index], trace));
}

/** One pack in each of the conditions. */
export function driveInConditions(job: Job, pack: Pack, trace: Trace): ConditionDrives {
  const drive = (condition: Condition) => driveCondition(job, pack, trace, condition);
  const winters = wintersOf(job);
  return {
    ...(winters && { winter: drive(winters.winter), tenYearsWinter: drive(winters.tenYearsWinter) }),
    others: othersOf(job).map(drive),
  };
}

/** One pack in one condition: over the road once from the ceiling, and on until it is empty. */
export function driveCondition(job: Job, pack: Pack, trace: Trace, condition: Condition): ConditionDrive {
  const { once, range } = driveOn(prepareIn(job, pack, condition), trace);
  const { totals } = once;
  const road = characteristics(trace);
  const km = totals.distance_m / M_PER_KM;
  const hours = totals.time_s / S_PER_H;
  const perHour_l = condition.weather ? fuelPerHour_l(condition.weather) : 0;
  return {
    name: condition.name,
    range_km: range.distance_m / M_PER_KM,
    rangeEnd: range.end,
    battery_Whpkm: km > 0 ? totals.terminal_J / J_PER_WH / km : 0,
    perMetre_J: totals.distance_m > 0 ? totals.ledger.total_J / totals.distance_m : 0,
    heater_kW: totals.heater_J / totals.time_s / W_PER_KW,
    missed_frac: missedOf(totals),
    isStuck: range.end === "stuck" && range.distance_m < (range.isThereAndBack ? 1.5 : 0.5) * road.distance_m,
    pack_degC: totals.hottestPack_K - ZERO_CELSIUS_K,
    fuel_l100km: km > 0 ? (100 * perHour_l * hours) / km : 0,
  };
}

function missedOf({ reachedFloor, target_m, distance_m }: Totals): number {
  return reachedFloor || target_m === 0 ? 0 : Math.max(0, target_m - distance_m) / target_m;
}

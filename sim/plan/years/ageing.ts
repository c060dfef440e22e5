import { inventedYear } from "../../../shared/job/inventedYear.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { naumannCalendarLoss_frac, naumannCycleLoss_frac } from "../../battery/ageing/naumannIronPhosphate.ts";
import { SCHMALSTIEG_CELL_Ah, schmalstieg } from "../../battery/ageing/schmalstiegNickel.ts";
import { WANG_CELL_Ah, wangCycleLoss_frac } from "../../battery/ageing/wangIronPhosphate.ts";
import { xuLoss_frac } from "../../battery/ageing/xuStress.ts";
import { straightAt } from "../../math/straightAt.ts";
import { daysOfYear, type YearJob } from "../year/days.ts";

/** Years of a pack's life that are looked at. */
export const YEARS = [0, 5, 10, 15] as const;
/** The last of them: nothing is said of a pack beyond. */
export const LIFE_years = 15;
const DAYS_A_YEAR = 365;
const DAY_s = 86_400;

/** What published laws leave of a pack after some years: the least and the most of two of them. */
export interface AgedPack {
  readonly years: number;
  readonly capacity_frac: { readonly low: number; readonly high: number };
  /** Resistance over that when new, by the one law that has it: nickel. */
  readonly resistance_ratio?: number;
}

/** How a pack is used in a year. */
export interface PackUse {
  /** Where it stands most of the time: between the evening's charge and a full one. */
  readonly standing_frac: number;
  readonly temperature_K: number;
  /** Of its whole charge, in one driving day, and how many days. */
  readonly depth_frac: number;
  readonly drivingDays: number;
  /** Mean C-rate while it drives. */
  readonly rate: number;
}

/** What of a job a pack's ageing hangs on. */
export type AgeingJob = YearJob & Pick<Job, "module">;

/**
 * How the usual days of a year use a pack that goes `range_km` on one charge at a mean speed: charged every night, and standing half-way between
 * the evening and full (assumed: it is charged some time in the night). Its cells are as warm as the year's mean (assumed).
 */
export function packUse(job: AgeingJob, pack: Pack, range_km: number, mean_kmh: number): PackUse {
  const { months_degC } = job.year ?? inventedYear;
  const mean_degC = months_degC.reduce((sum, each) => sum + each, 0) / months_degC.length;
  const window_frac = pack.ceiling_frac - pack.floor_frac;
  const depth_frac = Math.min(window_frac, (window_frac * job.usualDay_km) / range_km);
  return {
    standing_frac: pack.ceiling_frac - depth_frac / 2,
    temperature_K: mean_degC + ZERO_CELSIUS_K,
    depth_frac,
    drivingDays: daysOfYear(job).filter(({ kind }) => kind !== "off").length,
    rate: (window_frac * mean_kmh) / range_km,
  };
}

/**
 * What two published laws leave of a pack after each of the years, as a band: for nickel Schmalstieg's and Xu's, for iron phosphate Naumann's for
 * standing with Naumann's or with Wang's for cycling. They were found on single small cells in a laboratory: nothing of modules that
 * differ, of vibration or of faults is in them.
 */
export function agedPack(job: Pick<Job, "module">, pack: Pack, use: PackUse): AgedPack[] {
  return YEARS.map((years) => agedAfter(job, pack, use, years));
}

/** The same after any number of years. */
export function agedAfter({ module }: Pick<Job, "module">, pack: Pack, use: PackUse, years: number): AgedPack {
  return module.chemistry === "nickel" ? nickel(module, pack, use, years) : ironPhosphate(use, years);
}

function nickel(module: Job["module"], pack: Pack, use: PackUse, years: number): AgedPack {
  const { standing_frac, temperature_K, depth_frac, drivingDays } = use;
  const { openCircuit } = module;
  const cell_V = (soc_frac: number) => straightAt(openCircuit.soc_frac, openCircuit.cell_V, soc_frac);
  const cycles = years * drivingDays;
  const first = schmalstieg({
    standing_V: cell_V(standing_frac),
    temperature_K,
    time_days: years * DAYS_A_YEAR,
    mean_V: cell_V(pack.ceiling_frac - depth_frac / 2),
    depth_frac,
    // Out while driving and in again at night.
    throughput_Ah: 2 * depth_frac * SCHMALSTIEG_CELL_Ah * cycles,
  });
  const other = xuLoss_frac({
    soc_frac: standing_frac,
    temperature_K,
    depth_frac,
    cycles,
    time_s: years * DAYS_A_YEAR * DAY_s,
  });
  return { years, capacity_frac: between(1 - first.capacity_frac, other), resistance_ratio: first.resistance_ratio };
}

function ironPhosphate(use: PackUse, years: number): AgedPack {
  const { standing_frac, temperature_K, depth_frac, drivingDays, rate } = use;
  const fullCycles = depth_frac * drivingDays * years;
  const stood = naumannCalendarLoss_frac(standing_frac, temperature_K, years * DAYS_A_YEAR * DAY_s);
  const byNaumann = naumannCycleLoss_frac(rate, depth_frac, fullCycles);
  const byWang = wangCycleLoss_frac(rate, temperature_K, WANG_CELL_Ah * fullCycles);
  return { years, capacity_frac: between(stood + byNaumann, stood + byWang) };
}

function between(oneLoss: number, otherLoss: number): AgedPack["capacity_frac"] {
  return { low: Math.max(0, 1 - Math.max(oneLoss, otherLoss)), high: Math.min(1, 1 - Math.min(oneLoss, otherLoss)) };
}

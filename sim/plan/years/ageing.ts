import { inventedYear } from "../../../shared/job/inventedYear.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { naumannCalendarLoss_frac, naumannCycleLoss_frac } from "../../battery/ageing/naumannIronPhosphate.ts";
import { SCHMALSTIEG_CELL_Ah, schmalstieg } from "../../battery/ageing/schmalstiegNickel.ts";
import { WANG_CELL_Ah, wangCycleLoss_frac } from "../../battery/ageing/wangIronPhosphate.ts";
import { depthStress, xuLoss_frac } from "../../battery/ageing/xuStress.ts";
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
  /** What each driving day of a year takes, as a share of its whole charge. */
  readonly depths_frac: readonly number[];
  /** Mean C-rate while it drives. */
  readonly rate: number;
}

/** What of a job a pack's ageing hangs on. */
export type AgeingJob = YearJob & Pick<Job, "module">;

/**
 * How the driving days of a year, those of a client's list among them, use a pack that goes `range_km` on one charge at a mean speed: charged every
 * night, and standing half-way between a mean evening and full (assumed: it is charged some time in the night). A day beyond its range empties it
 * once. Its cells are as warm as the year's mean (assumed).
 */
export function packUse(job: AgeingJob, pack: Pack, range_km: number, mean_kmh: number): PackUse {
  const { months_degC } = job.year ?? inventedYear;
  const window_frac = pack.ceiling_frac - pack.floor_frac;
  const depths_frac = daysOfYear(job)
    .filter(({ kind }) => kind !== "off")
    .map(({ distance_km }) => Math.min(window_frac, (window_frac * distance_km) / range_km));
  return {
    standing_frac: pack.ceiling_frac - mean(depths_frac) / 2,
    temperature_K: mean(months_degC) + ZERO_CELSIUS_K,
    depths_frac,
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
  const { standing_frac, temperature_K, depths_frac } = use;
  const { openCircuit } = module;
  const cell_V = (soc_frac: number) => straightAt(openCircuit.soc_frac, openCircuit.cell_V, soc_frac);
  const standing_V = cell_V(standing_frac);
  // Out while driving and in again at night.
  const throughput_Ah = 2 * sum(depths_frac) * SCHMALSTIEG_CELL_Ah * years;
  const byFirst = (depth_frac: number) =>
    schmalstieg({
      standing_V,
      temperature_K,
      time_days: years * DAYS_A_YEAR,
      mean_V: cell_V(pack.ceiling_frac - depth_frac / 2),
      depth_frac,
      throughput_Ah,
    });
  const firstLoss_frac = byThroughput(depths_frac, (depth_frac) => 1 - byFirst(depth_frac).capacity_frac);
  const other = xuLoss_frac({
    soc_frac: standing_frac,
    temperature_K,
    cycleStress: years * sum(depths_frac.map(depthStress)),
    time_s: years * DAYS_A_YEAR * DAY_s,
  });
  return {
    years,
    capacity_frac: between(firstLoss_frac, other),
    resistance_ratio: 1 + byThroughput(depths_frac, (depth_frac) => byFirst(depth_frac).resistance_ratio - 1),
  };
}

function ironPhosphate(use: PackUse, years: number): AgedPack {
  const { standing_frac, temperature_K, depths_frac, rate } = use;
  const fullCycles = sum(depths_frac) * years;
  const stood = naumannCalendarLoss_frac(standing_frac, temperature_K, years * DAYS_A_YEAR * DAY_s);
  const byNaumann = byThroughput(depths_frac, (depth_frac) => naumannCycleLoss_frac(rate, depth_frac, fullCycles));
  const byWang = wangCycleLoss_frac(rate, temperature_K, WANG_CELL_Ah * fullCycles);
  return { years, capacity_frac: between(stood + byNaumann, stood + byWang) };
}

/**
 * What a law of one depth makes days of many cost: its value at the throughput of all, averaged over the days by what each puts through (assumed: the
 * papers cycled at one depth at a time). Days of one depth are as the law has them.
 */
function byThroughput(depths_frac: readonly number[], law: (depth_frac: number) => number): number {
  const all = sum(depths_frac);
  return all > 0 ? sum(depths_frac.map((depth_frac) => (depth_frac / all) * law(depth_frac))) : law(0);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, each) => total + each, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / Math.max(1, values.length);
}

function between(oneLoss: number, otherLoss: number): AgedPack["capacity_frac"] {
  return { low: Math.max(0, 1 - Math.max(oneLoss, otherLoss)), high: Math.min(1, 1 - Math.min(oneLoss, otherLoss)) };
}

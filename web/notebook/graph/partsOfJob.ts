import type { Job } from "../../../shared/job/job.ts";
import { roadsOfWeek } from "../../../sim/index.ts";

/** The job with all that does not move the car set to nothing, so that a change there is none to the simulation. */
export function machineOf(job: Job): Job {
  const { longestDay_km: _day, longestDaysAYear: _times, engine: _engine, drivenRoad: _road, ...rest } = job;
  const {
    pinned: _pinned,
    currency: _currency,
    costs: _costs,
    wiring: _wiring,
    conditions: _conditions,
    year: _year,
    week: _week,
    ...others
  } = rest;
  const roads: Job["roads"] = [{ kind: "trace", id: "none", title: "none", time_s: [0, 1], speed_kmh: [0, 0] }];
  const nothing = {
    predictions: [],
    title: "job",
    use: "",
    notes: [],
    hiddenSections: [],
    charts: [],
    supplies: [],
    sizing: { day: "usual", condition: "tenYearsWinter", sure: "asTaken" } as const,
    origins: {},
  };
  return {
    ...others,
    ...nothing,
    packs: others.packs.map(({ cellPrice: _price, isAskedFor: _asked, ...pack }) => pack),
    accessories: { ...others.accessories, items: others.accessories.items.map(asToday) },
    units: "metric",
    usualDay_km: 1,
    allowance: { winter_ratio: 1, aged_frac: 1 },
    roads,
  };
}

/** What the week hangs on: the car, its conditions, where it is charged, and the roads of its trips. */
export function weekOf(job: Job): Job {
  const { week, supplies, allowance, roads } = job;
  const ids = roadsOfWeek(job);
  const own = roads.filter(({ id }) => ids.includes(id));
  const machine = machineOf(job);
  return {
    ...machine,
    ...climateOf(job),
    week,
    supplies,
    allowance,
    roads: own.length > 0 ? own : machine.roads,
  };
}

/** What the job says of winter, age and other conditions: today's drives know nothing of it. */
export function climateOf({ conditions, allowance, accessories }: Job): Partial<Job> {
  if (conditions === undefined) return {};
  return { conditions, accessories, allowance: { winter_ratio: 1, aged_frac: allowance.aged_frac } };
}

/** A year without its list of days, which no drive hangs on. */
export function climateOfYear({ daysDriven_km: _days, ...year }: NonNullable<Job["year"]>): NonNullable<Job["year"]> {
  return year;
}

/** What cells cost, and in what. */
export function moneyOf({ costs, currency }: Job): Partial<Pick<Job, "costs" | "currency">> {
  return { ...(costs && { costs }), ...(currency !== undefined && { currency }) };
}

/** Origins of what moves the car and was not measured, without the words around them; what is allowed where that is in doubt. */
export function doubtsOf({ origins, allowance }: Job): Pick<Job, "origins"> & Partial<Pick<Job, "allowance">> {
  const doubts: Record<string, Job["origins"][string]> = {};
  for (const [path, { from, plusMinus_frac }] of Object.entries(origins)) {
    if (/^(usualDay|longestDay|engine|roads|costs)/.test(path) || from === "measured" || from === "handbook") continue;
    if (from === "typed" && plusMinus_frac === undefined) continue;
    doubts[path] = { from, ...(plusMinus_frac !== undefined && { plusMinus_frac }) };
  }
  const isAllowanceOpen = Object.keys(doubts).some((path) => path.startsWith("allowance."));
  return { origins: doubts, ...(isAllowanceOpen && { allowance }) };
}

function asToday({ winterDuty_frac: _winter, ...item }: Job["accessories"]["items"][number]) {
  return item;
}

import type { Job } from "../../../../shared/job/job.ts";
import { Costs } from "../../../../shared/job/schema/costs.ts";
import type { ChargeRow } from "../../../../sim/plan/charging/chargeRow.ts";
import type { CostJob } from "../../../../sim/plan/money/costPlan.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const exact = (amount: number) => ({ low: amount, high: amount });
const upkeep = (servicing: number, roadCharge_perday = 0) => ({ servicing: exact(servicing), roadCharge_perday });

/** A car for fine Sundays: 2000 km a year, nothing that must be paid without the conversion. Every figure is round, for a sum by hand. */
export const sundayCar = {
  work_perh: 50,
  work: [{ name: "Drive", parts: exact(6000), hours: { low_h: 80, high_h: 80 } }],
  cells: { per: "kWh", price: exact(200) },
  running: {
    fuel: "petrol",
    use_l100km: 8,
    price_perl: 1.5,
    now: upkeep(300),
    converted: upkeep(100),
    yearly: [{ distance_km: 2000 }],
    years: 10,
    grid_gpkWh: 200,
  },
};

/** A van that works: 25,000 km a year in days of 100 km into a town that asks 10 a day, with an engine that must be rebuilt. */
export const workingVan = {
  work_perh: 50,
  work: [{ name: "Drive", parts: exact(10_000), hours: { low_h: 160, high_h: 160 } }],
  cells: { per: "kWh", price: exact(200) },
  alternatives: [{ name: "rebuild", price: exact(5000), isNeededAnyway: true }],
  running: {
    fuel: "diesel",
    use_l100km: 12,
    price_perl: 1.5,
    insuranceMore: 100,
    now: upkeep(800, 10),
    converted: upkeep(300),
    yearly: [{ distance_km: 25_000 }],
    years: 10,
  },
};

/** A job of one pack of 10 kWh with these costs. Winter takes what summer takes, so that electricity is one figure. */
export function jobOf(costs: object, changes: Partial<Job> = {}): CostJob {
  const job = inventedJob();
  const packs: Job["packs"] = [{ ...job.packs[0], name: "10 kWh", seriesModules: 4, parallelModules: 1 }];
  const allowance = { winter_ratio: 1, aged_frac: 0.75 };
  return {
    ...job,
    packs,
    costs: Costs.parse(costs),
    currency: "EUR",
    usualDay_km: 100,
    allowance,
    origins: {},
    ...changes,
  };
}

/** Its pack: 10 kWh full, 100 Wh/km from the cells, so 10 kWh for a day of 100 km. */
export const tenKwh = inventedCandidate(10);

/** Its charge of a day: so much from the wall for each kilometre at 0.20 a kWh, or at a price that nobody entered. */
export function rowOf(wall_kWhpkm: number, price_perkWh: number | null = 0.2): ChargeRow {
  const day = {
    time_h: 5,
    taper_h: 0,
    stored_kWh: 10,
    wall_kWh: 100 * wall_kWhpkm,
    from_frac: 0.1,
    isMoreThanPack: false,
    ...(price_perkWh !== null && { cost: 100 * wall_kWhpkm * price_perkWh }),
    course: { time_s: [], soc_frac: [], wall_J: [], current_A: [] },
  };
  return { supply: "Home", pack: "10 kWh", usualDay: day, winterDay: day, emptyToFull: day };
}

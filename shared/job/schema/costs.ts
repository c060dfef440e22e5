import * as z from "zod";
import { across } from "./across.ts";
import { between, line } from "./number.ts";

/** The largest amount of money there is, in any currency. */
const MOST = 100_000_000;
/** The most that work on one car may take. */
const MOST_h = 5000;

/** An amount of money as far as it is known, in the job's currency; one figure where nothing higher is given. */
export const Amount = z
  .strictObject({ low: between(0, MOST), high: between(0, MOST).optional() })
  .check(across(["low", "high"], ({ low, high }, fault) => refuseFall("high", low, high, "low", fault)));
export type Amount = z.infer<typeof Amount>;

const WorkingHours = z
  .strictObject({ low_h: between(0, MOST_h), high_h: between(0, MOST_h).optional() })
  .check(
    across(["low_h", "high_h"], ({ low_h, high_h }, fault) => refuseFall("high_h", low_h, high_h, "low_h", fault)),
  );

/** By how much a price changes from one year to the next, as a band. */
const Drift = z
  .strictObject({ low_frac: between(-0.2, 0.3), high_frac: between(-0.2, 0.3).optional() })
  .check(
    across(["low_frac", "high_frac"], ({ low_frac, high_frac }, fault) =>
      refuseFall("high_frac", low_frac, high_frac, "low_frac", fault),
    ),
  );

/** One line of the quote, the same whatever the pack. */
const WorkLine = z.strictObject({ name: line, parts: Amount, hours: WorkingHours });

/** What a pack's cells cost: each module or each kilowatt-hour of the pack when full, or the pack as it is quoted. */
export const CellPrice = z.strictObject({ per: z.enum(["module", "kWh", "pack"]), price: Amount });
export type CellPrice = z.infer<typeof CellPrice>;

/** What a car costs to keep beside its fuel or electricity. */
const Upkeep = z.strictObject({
  /** A year. */
  servicing: Amount,
  /** For a day on which it is driven where that costs something. */
  roadCharge_perday: between(0, MOST),
});

/** What the client may do instead of the conversion. */
const Alternative = z.strictObject({
  name: line,
  price: Amount,
  /** Without the conversion this has to be paid; the conversion is then compared with it. */
  isNeededAnyway: z.boolean().default(false),
  /** Where it runs at other costs than the car does now: another car, a rebuilt engine. Fuel and its price stay those of now. */
  running: z.strictObject({ use_l100km: between(0.5, 100), ...Upkeep.shape }).optional(),
});
export type Alternative = z.infer<typeof Alternative>;

/** Running costs of the car now and as converted. */
const Running = z.strictObject({
  fuel: z.enum(["petrol", "diesel"]),
  use_l100km: between(0.5, 100),
  /** Not known where left out: nothing is then said of running costs. */
  price_perl: between(0, 100_000).optional(),
  now: Upkeep,
  converted: Upkeep,
  /** More insurance a year once it is converted; less where negative. */
  insuranceMore: between(-1_000_000, 1_000_000).default(0),
  /** Share of the days driven on which the road charge is due. */
  chargedDays_frac: between(0, 1).default(1),
  /** Distances of a year to work out, the client's own first. */
  yearly: z
    .array(z.strictObject({ distance_km: between(1, 300_000) }))
    .min(1)
    .max(6),
  /** How many years are looked ahead. */
  years: z.int().min(1).max(40).default(10),
  /** Rate a year at which later money counts less; not discounted where left out. */
  discount_frac: between(0, 0.5).optional(),
  fuelDrift: Drift.default({ low_frac: 0 }),
  electricityDrift: Drift.default({ low_frac: 0 }),
  /** Carbon dioxide of a kilowatt-hour from the wall, in grams; no carbon is worked out for the converted car where left out. */
  grid_gpkWh: between(0, 3000).optional(),
});
export type Running = z.infer<typeof Running>;

/** What the conversion costs, what the client would pay without it, and what the car costs to run. Amounts are in the job's currency. */
export const Costs = z
  .strictObject({
    /** Of an hour of the workshop's work. */
    work_perh: between(0, 1_000_000).optional(),
    work: z.array(WorkLine).max(60).default([]),
    /** Of the cells of every pack that has no price of its own. */
    cells: CellPrice.optional(),
    /** What may have to be added to the quote, as a share of it. */
    contingency_frac: between(0, 1).default(0),
    /** Tax on the whole quote; none where left out. */
    vat_frac: between(0, 1).optional(),
    alternatives: z.array(Alternative).max(6).default([]),
    running: Running.optional(),
  })
  .check(
    across(["alternatives.*.name"], ({ alternatives }, fault) => {
      alternatives.forEach(({ name }, i) => {
        if (alternatives.findIndex((other) => other.name === name) < i)
          fault(["alternatives", i, "name"], `found "${name}" twice, names must differ`);
      });
    }),
  );
export type Costs = z.infer<typeof Costs>;

function refuseFall(
  key: string,
  low: number,
  high: number | undefined,
  than: string,
  fault: (path: readonly string[], message: string) => void,
): void {
  if (high !== undefined && high < low) fault([key], `found ${high}, ${than} (${low}) or more wanted`);
}

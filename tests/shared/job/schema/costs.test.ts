import { expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { changedDemo } from "../../../support/changedDemo.ts";

function faultsOf(changes: Readonly<Record<string, unknown>>): string[] {
  try {
    readJob(changedDemo(changes));
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(({ where, message }) => `${where}: ${message}`);
  }
}

it("is left out of a job that has none, and a job of before reads as it did", () => {
  expect(readJob(changedDemo({ costs: undefined })).costs).toBeUndefined();
});

it("takes a currency of any text as text", () => {
  expect(readJob(changedDemo({ currency: "<b>£</b>" })).currency).toBe("<b>£</b>");
  expect(faultsOf({ currency: "more than ten letters" })).toHaveLength(1);
});

it.each([
  ["a negative price", { "costs.work.0.parts.low": -1 }, "costs.work.0.parts.low: found -1, 0 to 100000000 allowed"],
  [
    "low above high",
    { "costs.work.0.parts.low": 4000 },
    "costs.work.0.parts.high: found 3300, low (4000) or more wanted",
  ],
  [
    "hours that fall",
    { "costs.work.1.hours.high_h": 2 },
    "costs.work.1.hours.high_h: found 2, low_h (12) or more wanted",
  ],
  [
    "a drift that falls",
    { "costs.running.fuelDrift.low_frac": 0.1 },
    "costs.running.fuelDrift.high_frac: found 0.04, low_frac (0.1) or more wanted",
  ],
  [
    "no kilometre a year",
    { "costs.running.yearly.0.distance_km": 0 },
    "costs.running.yearly.0.distance_km: found 0 km, 1 to 300000 km allowed",
  ],
  ["no distance at all", { "costs.running.yearly": [] }, "costs.running.yearly: found"],
  [
    "a pack at a negative price",
    { "packs.0.cellPrice": { per: "kWh", price: { low: -5, high: 5 } } },
    "packs.0.cellPrice.price.low: found -5",
  ],
  ["a year and a half", { "costs.running.years": 1.5 }, "costs.running.years: found 1.5"],
  [
    "one name twice",
    { "costs.alternatives.1.name": "engine rebuild" },
    'costs.alternatives.1.name: found "engine rebuild" twice',
  ],
])("refuses %s", (_, changes, fault) => {
  const faults = faultsOf(changes);
  expect(faults).toHaveLength(1);
  expect(faults[0]).toContain(fault);
});

it("takes a tariff of nothing, and a rate of nothing", () => {
  expect(
    faultsOf({ "supplies.0.price_perkWh": 0, "supplies.0.cheap.price_perkWh": 0, "costs.running.discount_frac": 0 }),
  ).toEqual([]);
});

import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import type { Message } from "../../../../shared/quantity/message.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { ChargeRow } from "../../../../sim/plan/charging/chargeRow.ts";
import { type CostPlan, costPlan } from "../../../../sim/plan/money/costPlan.ts";
import { costNotes, costSentences } from "../../../../sim/plan/money/costWords.ts";
import { jobOf, rowOf, sundayCar, tenKwh, workingVan } from "./clientsByHand.ts";

function planOf(costs: object, row: ChargeRow, changes: Partial<Job> = {}): CostPlan {
  const plan = costPlan(jobOf(costs, changes), [tenKwh], { rows: [[row]] });
  if (!plan) throw new Error("a job with costs has a plan");
  return plan;
}

const words = (sentences: readonly Message[], units: "metric" | "british" = "metric") =>
  sentences.map((each) => messageIn(each, units).replace(/[\u00a0\u202f]/g, " ")).join(" ");

describe("the Sunday car, by hand", () => {
  const plan = planOf(sundayCar, rowOf(0.15));
  const [pack] = plan.packs;
  const [year] = pack.yearly;
  it("costs 6000 in parts, 80 h at 50 and 10 kWh at 200", () => {
    expect(pack.quote.total).toEqual({ value: 12_000, low: 12_000, high: 12_000 });
  });
  it("runs for 60 of electricity and 100 of servicing where it took 240 of petrol and 300", () => {
    // 2000 km at 0.15 kWh and 0.20; 2000 km at 8 l/100 km and 1.50.
    expect(year.running.value).toBeCloseTo(160, 9);
    expect(year.runningOther.value).toBeCloseTo(540, 9);
    expect(year.saves.value).toBeCloseTo(380, 9);
  });
  it("has cost 13 600 after ten years, 8200 more than leaving it as it is", () => {
    expect(year.spent[10].value).toBeCloseTo(13_600, 9);
    expect(year.spentOther[10].value).toBeCloseTo(5400, 9);
  });
  it("never pays back, and would from 10 000 / 0.9 = 11 111 km a year", () => {
    // 12 000 less ten times 200 of servicing, over ten times 0.12 - 0.03 a kilometre.
    expect(year.payback).toEqual({});
    expect(pack.paysFrom_km).toBeCloseTo(10_000 / 0.9, 6);
    expect(words(costSentences(plan, pack))).toBe(
      "10 kWh costs 12 000 EUR. At 2000 km a year it saves 380 EUR a year. It does not pay back within 10 years; it would from about 11000 km a year.",
    );
    expect(words(costSentences(plan, pack), "british")).toMatch(/it would from about 6900 miles a year\.$/);
  });
  it("burns 188 g a kilometre now, and 30 g at the grid that was entered", () => {
    // 0.08 l at 2347.7 g; 0.15 kWh at 200 g.
    expect(plan.fuelCarbon_gpkm).toBeCloseTo(0.08 * (8887 / 3.785411784), 9);
    expect(pack.carbon_gpkm?.value).toBeCloseTo(30, 9);
  });
});

describe("the working van, by hand", () => {
  const plan = planOf(workingVan, rowOf(0.3));
  const [pack] = plan.packs;
  const [year] = pack.yearly;
  it("costs 20 000, 15 000 more than the rebuild that it needs anyway", () => {
    expect(pack.quote.total?.value).toBe(20_000);
    expect(pack.extra?.value).toBe(15_000);
    expect(plan.against.name).toBe("rebuild");
  });
  it("takes 4500 of diesel, 250 days at 10 and 800 now; 1500 of electricity, 300 and 100 more insurance then", () => {
    expect(year.runningOther.value).toBeCloseTo(7800, 9);
    expect(year.running.value).toBeCloseTo(1900, 9);
  });
  it("pays back after 15 000 / 5900 = 2.54 years", () => {
    expect(year.payback.value_years).toBeCloseTo(15_000 / 5900, 9);
    expect(words(costSentences(plan, pack))).toBe(
      "10 kWh costs 20 000 EUR, 15 000 EUR more than the alternative (rebuild). At 25000 km a year it saves 5900 EUR a year. It pays back in about 3 years.",
    );
  });
  it("pays back later where the years to come are discounted", () => {
    // 5900/1.1 + 5900/1.21 = 10 239.7; the third year brings 4432.8 and the fourth 4029.8: 3 + 327.5/4029.8.
    const { packs } = planOf({ ...workingVan, running: { ...workingVan.running, discount_frac: 0.1 } }, rowOf(0.3));
    expect(packs[0].yearly[0].payback.value_years).toBeCloseTo(3.0813, 3);
  });
});

describe("bands", () => {
  const band = (low: number, high: number) => ({ low, high });
  const open = {
    ...workingVan,
    work: [{ name: "Drive", parts: band(9000, 11_000), hours: { low_h: 140, high_h: 180 } }],
    contingency_frac: 0.1,
    vat_frac: 0.2,
  };
  it("of a quote are all low without contingency to all high with it, tax on both", () => {
    // 9000 + 7000 + 2000 = 18 000; (11 000 + 9000 + 2000) x 1.1 = 24 200; both times 1.2.
    const [{ quote }] = planOf(open, rowOf(0.3)).packs;
    expect(quote.total?.low).toBeCloseTo(21_600, 9);
    expect(quote.total?.high).toBeCloseTo(29_040, 9);
    expect(quote.total?.value).toBeCloseTo((21_600 + 29_040) / 2, 9);
  });
  it("of the payback hold its early and its late end", () => {
    // 21 600 - 5000 and 29 040 - 5000, both over 5900 a year.
    const [{ yearly }] = planOf(open, rowOf(0.3)).packs;
    expect(yearly[0].payback.early_years).toBeCloseTo(16_600 / 5900, 9);
    expect(yearly[0].payback.late_years).toBeCloseTo(24_040 / 5900, 9);
  });
  it("of the consumption come from how it was typed", () => {
    const origins = { "costs.running.use_l100km": { from: "measured", plusMinus_frac: 0.1 } } as const;
    const [{ yearly }] = planOf(workingVan, rowOf(0.3), { origins }).packs;
    expect(yearly[0].runningOther).toEqual({
      value: expect.closeTo(7800, 9),
      low: expect.closeTo(7350, 9),
      high: expect.closeTo(8250, 9),
    });
  });
  it("of prices that drift add up year by year", () => {
    const running = { ...workingVan.running, fuelDrift: { low_frac: 0, high_frac: 0.1 } };
    const [{ yearly }] = planOf({ ...workingVan, running }, rowOf(0.3)).packs;
    // Two years of diesel: 4500 + 4500 to 4500 + 4950, beside 2 x 3300 and the rebuild.
    expect(yearly[0].spentOther[2].low).toBeCloseTo(9000 + 6600 + 5000, 9);
    expect(yearly[0].spentOther[2].high).toBeCloseTo(9450 + 6600 + 5000, 9);
  });
});

it("costs as much as the alternative by the end of the years at the distance from which it pays back", () => {
  const running = { ...sundayCar.running, discount_frac: 0.04, fuelDrift: { low_frac: 0.01, high_frac: 0.03 } };
  const from_km = planOf({ ...sundayCar, running }, rowOf(0.15)).packs[0].paysFrom_km ?? 0;
  const there = { ...running, yearly: [{ distance_km: from_km }] };
  const [year] = planOf({ ...sundayCar, running: there }, rowOf(0.15)).packs[0].yearly;
  expect(from_km).toBeGreaterThan(5000);
  expect(year.spent[10].value / year.spentOther[10].value).toBeCloseTo(1, 9);
});

describe("what does not pay at any distance", () => {
  it("says so where each kilometre costs no less", () => {
    const plan = planOf(sundayCar, rowOf(0.15, 0.9));
    expect(plan.packs[0].paysFrom_km).toBeUndefined();
    expect(words(costSentences(plan, plan.packs[0]))).toMatch(
      /It does not pay back within 10 years; driving more does not change that, as driving itself costs no less\.$/,
    );
  });
  it("says what would be beyond any old car", () => {
    const plan = planOf({ ...sundayCar, work_perh: 2000 }, rowOf(0.15));
    expect(words(costSentences(plan, plan.packs[0]))).toMatch(/; it would only at more than 100000 km a year\.$/);
  });
});

describe("what costs less, as much, or either", () => {
  const priced = (low: number, high: number) => ({
    alternatives: [{ name: "other car", price: { low, high }, isNeededAnyway: true }],
  });
  const said = (changes: object) => {
    const plan = planOf({ ...workingVan, ...changes }, rowOf(0.3));
    return words(costSentences(plan, plan.packs[0]));
  };
  it("than the alternative is said that way round", () => {
    expect(said(priced(25_000, 30_000))).toMatch(
      /^10 kWh costs 20 000 EUR, 5000 to 10 000 EUR less than the alternative \(other car\)\..* It pays back within the first year\.$/,
    );
    expect(said(priced(18_000, 23_000))).toMatch(/, between 3000 EUR less and 2000 EUR more than the alternative/);
    expect(said(priced(20_000, 20_000))).toMatch(/, no more than the alternative/);
    expect(said(priced(18_000, 20_000))).toMatch(/, up to 2000 EUR more than the alternative/);
  });
  it("to run too", () => {
    const costing = (servicing: object) =>
      said({ running: { ...workingVan.running, converted: { servicing, roadCharge_perday: 0 } } });
    expect(costing({ low: 7200, high: 8200 })).toMatch(
      /it costs 1000 to 2000 EUR more a year to run\. It does not pay back/,
    );
    expect(costing({ low: 6000, high: 6400 })).toMatch(/it saves up to 200 EUR a year, or costs up to 200 EUR more\./);
    expect(costing({ low: 6200, high: 6200 })).toMatch(/it costs as much to run\./);
  });
});

describe("what is missing is said, and no number stands in for it", () => {
  it("a price of cells, of an hour, of a kWh, the running costs", () => {
    const without = planOf({ work: sundayCar.work }, rowOf(0.15));
    expect(without.packs[0].quote.total).toBeUndefined();
    expect(without.packs[0].yearly).toEqual([]);
    expect(words(costSentences(without, without.packs[0]))).toBe(
      "The price of the cells of 10 kWh is not entered. The price of an hour of work is not entered. Fuel and running costs are not entered.",
    );
    const unpriced = planOf(sundayCar, rowOf(0.15, null));
    expect(words(costSentences(unpriced, unpriced.packs[0]))).toBe(
      "10 kWh costs 12 000 EUR. The price of a kWh at Home is not entered.",
    );
  });
  it("a car that does not drive, and a pack that is not charged", () => {
    const stuck = planOf(sundayCar, { supply: "Home", pack: "10 kWh" });
    expect(words(stuck.packs[0].missing)).toBe(
      "10 kWh does not drive this road, so what its electricity costs is not known.",
    );
    const stopped = planOf(sundayCar, { supply: "Home", pack: "10 kWh", stop: ["Warm the pack first."] });
    expect(words(stopped.packs[0].missing)).toBe("Warm the pack first.");
  });
  it("a price of fuel, while the price of the conversion is said", () => {
    const { price_perl: _, ...running } = sundayCar.running;
    const plan = planOf({ ...sundayCar, running }, rowOf(0.15));
    expect(words(costSentences(plan, plan.packs[0]))).toBe(
      "10 kWh costs 12 000 EUR. The price of fuel is not entered.",
    );
  });
  it("nothing where everything is entered", () => {
    expect(planOf(sundayCar, rowOf(0.15)).packs[0].missing).toEqual([]);
  });
  it("but electricity that costs nothing is a price", () => {
    const [{ yearly }] = planOf(sundayCar, rowOf(0.15, 0)).packs;
    expect(yearly[0].running.value).toBeCloseTo(100, 9);
  });
});

it("says its assumptions: bands, winter, drift, discount, and that cells may want replacing", () => {
  const running = { ...sundayCar.running, years: 15, discount_frac: 0.03 };
  const notes = words(costNotes(planOf({ ...sundayCar, running }, rowOf(0.15))));
  expect(notes).toMatch(/Compared with leaving it as it is, as no alternative is marked as needed anyway\./);
  expect(notes).toMatch(/winter’s energy on none to half of the days \(assumed\)/);
  expect(notes).toMatch(/counts 3 % less for each year/);
  expect(notes).toMatch(/nor are new cells, which so many years may want\.$/);
});

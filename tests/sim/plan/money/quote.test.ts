import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { Costs } from "../../../../shared/job/schema/costs.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { cellsOf, quotesOf } from "../../../../sim/plan/money/quote.ts";
import { jobOf, tenKwh } from "./clientsByHand.ts";

const exact = (amount: number) => ({ low: amount, high: amount });
const line = (name: string, parts: number, hours: number) => ({
  name,
  parts: exact(parts),
  hours: { low_h: hours, high_h: hours },
});

function quoteOf(costs: object) {
  const { packs } = jobOf({});
  const [quote] = quotesOf({ packs, costs: Costs.parse(costs) }, [tenKwh.pack]) ?? [];
  if (!quote) throw new Error("a job with costs has a quote");
  return quote;
}

const missing = (costs: object) => quoteOf(costs).missing.map((each) => messageIn(each, "metric"));

describe("the cells of a pack of 10 kWh, six modules in series, two beside each", () => {
  const pack: Job["packs"][number] = { ...jobOf({}).packs[0], seriesModules: 6, parallelModules: 2 };
  const cells = (per: "module" | "kWh" | "pack", of = pack) =>
    cellsOf({ per, price: { low: 100, high: 120 } }, of, { nominal_kWh: 10 });
  it("are priced by the twelve modules, by the ten kilowatt-hours, or as quoted", () => {
    expect(cells("module")).toEqual({ value: 1320, low: 1200, high: 1440 });
    expect(cells("kWh")).toEqual({ value: 1100, low: 1000, high: 1200 });
    expect(cells("pack")).toEqual({ value: 110, low: 100, high: 120 });
  });
  it("have no price by the module where the pack is given as a whole, but have one by the kWh", () => {
    const whole: Job["packs"][number] = {
      ...pack,
      whole: { energy_kWh: 10, nominal_V: 100, mass_kgpkWh: 8 },
    };
    expect(cells("module", whole)).toBeUndefined();
    expect(cells("kWh", whole)).toEqual({ value: 1100, low: 1000, high: 1200 });
    expect(cells("pack", whole)).toEqual({ value: 110, low: 100, high: 120 });
  });
  it("have no price where none is entered", () => {
    expect(cellsOf(undefined, pack, { nominal_kWh: 10 })).toBeUndefined();
  });
});

describe("a quote", () => {
  const cells = { per: "pack", price: exact(1000) };
  it("adds parts, hours at the rate and cells, then the contingency at the dear end, then tax on all of it", () => {
    // 200 + 10 x 40 + 1000 = 1600; a tenth of it is 160; a fifth of 1600 and of 1760 are 320 and 352.
    const quote = quoteOf({
      work_perh: 40,
      work: [line("Drive", 200, 10)],
      cells,
      contingency_frac: 0.1,
      vat_frac: 0.2,
    });
    expect(quote.sum).toEqual({ value: 1600, low: 1600, high: 1600 });
    expect(quote.contingency).toEqual({ value: 80, low: 0, high: 160 });
    expect(quote.vat).toEqual({ value: 336, low: 320, high: 352 });
    expect(quote.total).toEqual({ value: 2016, low: 1920, high: 2112 });
  });
  it("of an hour without a rate has no total, and the hours cost nothing meanwhile", () => {
    const quote = quoteOf({ work: [line("Parts", 200, 0), line("Drive", 0, 10)], cells });
    expect(quote.total).toBeUndefined();
    expect(quote.sum.value).toBe(1200);
    expect(missing({ work: [line("Parts", 200, 0), line("Drive", 0, 10)], cells })).toEqual([
      "The price of an hour of work is not entered.",
    ]);
  });
  it("asks for the rate from the first part of an hour on, and not where there is no work by the hour", () => {
    expect(missing({ work: [line("Drive", 200, 0.5)], cells })).toHaveLength(1);
    expect(missing({ work: [line("Drive", 200, 0)], cells })).toEqual([]);
    expect(missing({ work_perh: 40, work: [line("Drive", 200, 0.5)], cells })).toEqual([]);
  });
  it("without any work says so, and without a price of cells names the pack", () => {
    expect(missing({ cells })).toEqual(["No work is in the quote yet."]);
    expect(missing({ work: [line("Drive", 200, 0)] })).toEqual(["The price of the cells of 10 kWh is not entered."]);
  });
});

import { describe, expect, it } from "vitest";
import { Costs, type Running } from "../../../../shared/job/schema/costs.ts";
import { type Message, messageIn } from "../../../../shared/quantity/message.ts";
import type { AlternativeCosts, CostPlan, PackCosts } from "../../../../sim/plan/money/costPlan.ts";
import { costNotes, costSentences } from "../../../../sim/plan/money/costWords.ts";
import type { Payback } from "../../../../sim/plan/money/payback.ts";
import { between, exactly, NOTHING, type Span } from "../../../../sim/plan/money/span.ts";
import { sundayCar } from "./clientsByHand.ts";

const said = (sentences: readonly Message[]) =>
  sentences.map((each) => messageIn(each, "metric").replace(/[\u00a0\u202f]/g, " "));

interface Case {
  readonly extra?: Span;
  readonly saves?: Span;
  readonly payback?: Payback;
  readonly distance_km?: number;
  readonly paysFrom_km?: number;
}

/** The sentences of a pack at 12 000 EUR beside a rebuild, over ten years. */
function sentencesOf({ extra, saves = exactly(380), payback = {}, distance_km = 2000, paysFrom_km }: Case): string[] {
  const quote = { pack: "A", lines: [], sum: NOTHING, contingency: NOTHING, vat: NOTHING, total: exactly(12_000) };
  const year = { distance_km, running: NOTHING, runningOther: NOTHING, saves, spent: [], spentOther: [], payback };
  const pack: PackCosts = {
    quote: { ...quote, missing: [] },
    electricity: [],
    yearly: [year],
    missing: [],
    ...(extra && { extra }),
    ...(paysFrom_km !== undefined && { paysFrom_km }),
  };
  return said(costSentences(planOf({}), pack));
}

function planOf(running: object, isAsItIs = false): CostPlan {
  const against: AlternativeCosts = {
    name: "rebuild",
    price: NOTHING,
    isNeededAnyway: !isAsItIs,
    isAsItIs,
    running: [],
    spent: [],
  };
  return { currency: "EUR", running: runningOf(running), alternatives: [against], against, packs: [] };
}

function runningOf(changes: object): Running {
  const { running } = Costs.parse({ running: { ...sundayCar.running, ...changes } });
  if (!running) throw new Error("running costs were left out");
  return running;
}

describe("beside the alternative", () => {
  const compared = (low: number, high: number) => sentencesOf({ extra: between(low, high) })[0];
  it.each([
    [1000, 2000, "1000 to 2000 EUR more than"],
    [0, 2000, "up to 2000 EUR more than"],
    [0, 0.5, "up to 0.50 EUR more than"],
    [-2000, -1000, "1000 to 2000 EUR less than"],
    [-2000, 0, "up to 2000 EUR less than"],
    [-50, 0.5, "between 50 EUR less and 0.50 EUR more than"],
    [0, 0, "no more than"],
    // Both ends are as fine as the larger: of 2000 to three figures, 3 is rounded away and 5.1 is ten.
    [-3, 2000, "up to 2000 EUR more than"],
    [-5.1, 2000, "between 10 EUR less and 2000 EUR more than"],
  ])("%f to %f more is: %s", (low, high, words) => {
    expect(compared(low, high)).toBe(`A costs 12 000 EUR, ${words} the alternative (rebuild).`);
  });
});

describe("what a year saves, to two figures", () => {
  const saving = (low: number, high: number) => sentencesOf({ saves: between(low, high) })[1];
  it.each([
    [1234, 5678, "saves 1200 to 5700 EUR a year"],
    [0, 5678, "saves up to 5700 EUR a year"],
    [0, 0.5, "saves up to 0.50 EUR a year"],
    [-5678, -1234, "costs 1200 to 5700 EUR more a year to run"],
    [-5678, 0, "costs up to 5700 EUR more a year to run"],
    [-9, 0.5, "saves up to 0.50 EUR a year, or costs up to 9 EUR more"],
    [-1234, 5678, "saves up to 5700 EUR a year, or costs up to 1200 EUR more"],
    [-9.5, 2.5, "saves up to 2.5 EUR a year, or costs up to 9.5 EUR more"],
    [-0.5, -0.5, "costs 0.50 EUR more a year to run"],
    [0, 0, "costs as much to run"],
    // Both ends are as fine as the larger: 49 is rounded away, 51 is a hundred.
    [-49, 5678, "saves up to 5700 EUR a year"],
    [-51, 5678, "saves up to 5700 EUR a year, or costs up to 100 EUR more"],
  ])("%f to %f is: %s", (low, high, words) => {
    expect(saving(low, high)).toBe(`At 2000 km a year it ${words}.`);
  });
});

describe("when it pays back", () => {
  const paying = (payback: Payback) => sentencesOf({ payback })[2];
  const within = (early_years: number, late_years: number) =>
    paying({ value_years: (early_years + late_years) / 2, early_years, late_years });
  it.each([
    [0, 0.4, "within the first year"],
    [0.4, 0.6, "within 1 year"],
    [0.2, 3.4, "within 3 years"],
    [0.6, 1.4, "in about 1 year"],
    [2.6, 3.4, "in about 3 years"],
    [1.4, 1.6, "in 1 to 2 years"],
    [3, 8.2, "in 3 to 8 years"],
  ])("well after %f years, badly after %f: %s", (early_years, late_years, words) => {
    expect(within(early_years, late_years)).toBe(`It pays back ${words}.`);
  });
  it.each([
    [0.4, "within the first year"],
    [1.2, "in about 1 year"],
    [7, "in about 7 years"],
  ])("in the middle after %f years, badly not at all", (value_years, words) => {
    expect(paying({ value_years, early_years: 0.1 })).toBe(
      `It pays back ${words}, but not within 10 years if everything turns out badly.`,
    );
  });
  it("only if everything turns out well", () => {
    expect(sentencesOf({ payback: { early_years: 8.6 }, paysFrom_km: 3400 })[2]).toBe(
      "It does not pay back within 10 years unless everything turns out well (then in about 9 years); it would from about 3400 km a year.",
    );
  });
});

describe("the distance from which it would", () => {
  const from = (distance_km: number, paysFrom_km?: number) =>
    sentencesOf({ distance_km, ...(paysFrom_km !== undefined && { paysFrom_km }) })[2];
  it("has a third figure where it lies within a tenth of the client's own, so that the two do not read alike", () => {
    expect(from(10_000, 10_450)).toMatch(/; it would from about 10500 km a year\.$/);
    expect(from(10_000, 10_950)).toMatch(/; it would from about 11000 km a year\.$/);
    expect(from(10_000, 10_990)).toMatch(/; it would from about 11000 km a year\.$/);
    expect(from(10_000, 12_340)).toMatch(/; it would from about 12000 km a year\.$/);
    expect(from(1130, 1234)).toMatch(/; it would from about 1230 km a year\.$/);
    expect(from(1110, 1234)).toMatch(/; it would from about 1200 km a year\.$/);
  });
  it("is not said beyond 100 000 km, nor where driving itself costs no less", () => {
    expect(from(2000, 100_000)).toMatch(/; it would from about 100000 km a year\.$/);
    expect(from(2000, 100_001)).toMatch(/; it would only at more than 100000 km a year\.$/);
    expect(from(2000)).toMatch(/; driving more does not change that, as driving itself costs no less\.$/);
  });
});

describe("what the figures assume", () => {
  const notes = (running: object, isAsItIs = false) => said(costNotes(planOf(running, isAsItIs)));
  const FLAT = "Prices stay as they are today; a drift of prices can be entered.";
  const DRIFTING = "Prices of fuel and electricity drift as entered; servicing and road charges stay.";
  it("says what it is held against, and why where nothing else was marked", () => {
    expect(notes({})).toContain("Compared with rebuild.");
    expect(notes({}, true)).toContain("Compared with rebuild, as no alternative is marked as needed anyway.");
  });
  it.each([
    [{}, FLAT],
    [{ fuelDrift: { low_frac: 0, high_frac: 0 } }, FLAT],
    [{ fuelDrift: { low_frac: 0.02 } }, DRIFTING],
    [{ fuelDrift: { low_frac: 0, high_frac: 0.02 } }, DRIFTING],
    [{ fuelDrift: { low_frac: -0.02, high_frac: 0 } }, DRIFTING],
    [{ electricityDrift: { low_frac: 0.02 } }, DRIFTING],
  ])("%o: prices stay, or drift if one of them does at one end", (drift, words) => {
    const all = notes(drift);
    expect(all.filter((note) => note === FLAT || note === DRIFTING)).toEqual([words]);
  });
  it("says at what rate later money counts less, if it does", () => {
    const FULL = "Later money counts in full; a discount rate can be entered.";
    expect(notes({})).toContain(FULL);
    expect(notes({ discount_frac: 0 })).toContain(FULL);
    expect(notes({ discount_frac: 0.03 })).toContain(
      "Later money counts 3 % less for each year, paid at the end of each year.",
    );
  });
  it("speaks of new cells from more than ten years on", () => {
    expect(notes({ years: 10 }).at(-1)).toBe("Resale value, loans and taxes on income are not counted.");
    expect(notes({ years: 11 }).at(-1)).toBe(
      "Resale value, loans and taxes on income are not counted, nor are new cells, which so many years may want.",
    );
  });
  it("is nothing where no running costs are entered", () => {
    const { running: _, ...without } = planOf({});
    expect(costNotes(without)).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { paybackOf, paysFrom_km, spentBy, type Way } from "../../../../sim/plan/money/payback.ts";
import { exactly, type Span } from "../../../../sim/plan/money/span.ts";

// Straight lines of money over the years, each worked out by hand.
const all = (...amounts: readonly number[]): Span[] => amounts.map(exactly);
const noneOf = (spent: readonly Span[]) => all(...spent.map(() => 0));
const paid = (more: readonly Span[]) => paybackOf(more, noneOf(more));

describe("when the dearer way has paid for itself", () => {
  it("is within the first year where that year brings more than the price", () => {
    // 100 more at once, 100 less a year later: half a year.
    expect(paid(all(100, -100)).value_years).toBe(0.5);
  });
  it("is at once where it never costs more, or exactly as much", () => {
    expect(paid(all(0, -100)).value_years).toBe(0);
    expect(paid(all(-1, -2)).value_years).toBe(0);
  });
  it("is not yet where half a unit of money is left at the end, and is where nothing is left", () => {
    expect(paid(all(2, 1, 0.5))).toEqual({});
    expect(paid(all(2, 1, 0)).value_years).toBe(2);
  });
  it("counts from the last time that it costs more", () => {
    // Cheaper after one year, dearer again after two by 10, then cheaper by 30: 2 + 10/40.
    expect(paid(all(50, -10, 10, -30)).value_years).toBe(2.25);
  });
  it("is earlier where all turns out well and later where all turns out badly", () => {
    const one = [
      { value: 100, low: 90, high: 120 },
      { value: 0, low: -10, high: 60 },
      { value: -100, low: -110, high: -20 },
    ];
    // Held against 0: 90/(90 + 10); 100/(100 + 0) years; 1 + 60/(60 + 20).
    expect(paid(one)).toEqual({ value_years: 1, early_years: 0.9, late_years: 1.75 });
  });
});

function wayOf(price: number, perKm: number, changes: Partial<Way["running"]> = {}): Way {
  const running = { energyPerKm: exactly(perKm), drift: exactly(0), chargePerKm: 0, upkeep: exactly(0), ...changes };
  return { price: exactly(price), running };
}

describe("what is spent by the end of each year", () => {
  it("is the price, and then as much as a year costs, one entry more than years", () => {
    // 1000 km at 0.1 + 0.05 of road charges, and 50 of servicing: 200 a year.
    const way = wayOf(300, 0.1, { chargePerKm: 0.05, upkeep: exactly(50) });
    expect(spentBy(way, 1000, 3, 0).map(({ value }) => value)).toEqual([300, 500, 700, 900].map(near));
  });
});

describe("the yearly distance from which it pays back", () => {
  it("is what it costs more standing still over what each kilometre saves, road charges with it", () => {
    // 1200 more, and 5 years of 20 more servicing: 1300. Each kilometre saves 0.10 + 0.03 - 0.01 a year: 0.12 x 5.
    const one = wayOf(2200, 0.1, { chargePerKm: 0.01, upkeep: exactly(120) });
    const other = wayOf(1000, 0.2, { chargePerKm: 0.03, upkeep: exactly(100) });
    expect(paysFrom_km(one, other, 5, 0)).toBeCloseTo(1300 / 0.6, 9);
  });
  it("is 0 where it costs less standing still", () => {
    expect(paysFrom_km(wayOf(900, 0.1), wayOf(1000, 0.2), 5, 0)).toBe(0);
  });
  it("is a fraction of a kilometre where it costs a fraction of a unit more", () => {
    // 0.05 more over 5 x 0.1.
    expect(paysFrom_km(wayOf(1000.05, 0.1), wayOf(1000, 0.2), 5, 0)).toBeCloseTo(0.1, 9);
  });
  it("is none where each kilometre costs more, even where the car costs less to buy", () => {
    expect(paysFrom_km(wayOf(900, 0.3), wayOf(1000, 0.2), 5, 0)).toBeUndefined();
  });
  it("is every distance or none where a kilometre costs the same: by the price", () => {
    expect(paysFrom_km(wayOf(1000, 0.2), wayOf(1000, 0.2), 5, 0)).toBe(0);
    expect(paysFrom_km(wayOf(999, 0.2), wayOf(1000, 0.2), 5, 0)).toBe(0);
    expect(paysFrom_km(wayOf(1000.5, 0.2), wayOf(1000, 0.2), 5, 0)).toBeUndefined();
  });
});

function near(value: number): number {
  return expect.closeTo(value, 9);
}

import { describe, expect, it } from "vitest";
import type { CostPlan } from "../../../../sim/index.ts";
import { carbonRows, electricityRows, quoteRows, yearRows } from "../../../../web/sections/parts/costRows.ts";

const span = (low: number, high = low) => ({ value: (low + high) / 2, low, high });
const none = span(0);

describe("a quote", () => {
  const line = { name: "Drive", parts: span(1000), hours: span(10, 12), work: span(400, 480) };
  it("has parts, hours and work of each line, and what is added to them", () => {
    const quote = { pack: "A", lines: [line], contingency: none, vat: span(280), total: span(1680, 1760) };
    const rows = quoteRows(quote as unknown as Parameters<typeof quoteRows>[0], "EUR");
    expect(rows.map(([name]) => name)).toEqual(["Drive", "VAT", "Price"]);
    expect(rows[0][2]).toBe("10 to 12 h");
  });
  it("has a dash where there is nothing", () => {
    const bare = { ...line, parts: none, hours: none };
    const quote = { pack: "A", lines: [bare], contingency: none, vat: none };
    expect(quoteRows(quote as unknown as Parameters<typeof quoteRows>[0], "EUR")[0].slice(1, 3)).toEqual(["–", "–"]);
  });
});

describe("the years", () => {
  const pack = (payback: object) => ({ quote: { pack: "A" }, yearly: [{ running: span(300), spent: [], payback }] });
  const rowOf = (payback: object) => {
    const plan = { packs: [pack(payback)], alternatives: [], currency: "EUR", running: { years: 10 } };
    return yearRows(plan as unknown as CostPlan, 0)[0].at(-1);
  };
  it("say from when to when it is paid back, or that it is not", () => {
    expect(rowOf({ early_years: 4.2, value_years: 6, late_years: 8.6 })).toBe("4 to 9, middle 6");
    expect(rowOf({ early_years: 4.2 })).toBe("4 to over 10");
    expect(rowOf({})).toBe("not in 10");
  });
});

it("has the energy of each place where the pack is charged, with its cost over a hundred", () => {
  const pack = { electricity: [{ supply: "Garage", wall_kWhpkm: span(0.15, 0.17), costPerKm: span(0.05) }] };
  const rows = electricityRows(pack as unknown as CostPlan["packs"][number], "EUR", "metric");
  expect(rows[0].slice(0, 2)).toEqual(["Garage", "150 Wh/km to 170 Wh/km"]);
  expect(rows[0][2]).toMatch(/5.* for 100 km$/);
});

it("has carbon dioxide only where the fuel and a yearly distance are known", () => {
  const pack = { quote: { pack: "A" }, carbon_gpkm: { low: 30, high: 40 } } as unknown as CostPlan["packs"][number];
  const plan = { running: { yearly: [{ distance_km: 2000 }] }, fuelCarbon_gpkm: 190 } as unknown as CostPlan;
  const rows = carbonRows(plan, pack, "metric");
  // 190 g/km over 2000 km.
  expect(rows[0].at(-1)).toBe("380 kg");
  expect(rows[1].at(-1)).toBe("60 kg to 80 kg");
  expect(carbonRows({} as CostPlan, pack, "metric")).toEqual([]);
});

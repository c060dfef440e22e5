import { describe, expect, it } from "vitest";
import type { PackCosts } from "../../../../sim/plan/money/costPlan.ts";
import type { Quote } from "../../../../sim/plan/money/quote.ts";
import { quoteTable } from "../../../../sim/plan/money/quoteTable.ts";
import { between, exactly, NOTHING } from "../../../../sim/plan/money/span.ts";

const drive = { name: "Drive", parts: between(900, 1100), hours: between(10, 12), work: between(400.004, 480.006) };
const whole: Quote = {
  pack: "A",
  lines: [drive],
  sum: between(1300, 1580),
  contingency: between(0, 158),
  missing: [],
  vat: between(260, 347.6),
  total: between(1560, 2085.6),
};

function rowsOf(quote: Quote) {
  const pack: PackCosts = { quote, electricity: [], yearly: [], missing: [] };
  return quoteTable({ currency: "EUR", packs: [pack] }).rows;
}

describe("a quote for a spreadsheet", () => {
  it("has parts, hours, work and their sum of each line, low and high, to hundredths", () => {
    expect(rowsOf(whole)[0]).toEqual(["A", "Drive", 900, 1100, 10, 12, 400, 480.01, 1300, 1580.01, "EUR"]);
  });
  it("has contingency, tax and total as amounts alone", () => {
    const alone = ["", "", "", "", "", ""];
    expect(rowsOf(whole).slice(1)).toEqual([
      ["A", "Contingency", ...alone, 0, 158, "EUR"],
      ["A", "VAT", ...alone, 260, 347.6, "EUR"],
      ["A", "Total", ...alone, 1560, 2085.6, "EUR"],
    ]);
  });
  it("has no row of tax where there is none, has one of half a unit, and no total while something is not priced", () => {
    const { total: _, ...open } = whole;
    const names = (quote: Quote) => rowsOf(quote).map(([, line]) => line);
    expect(names({ ...whole, vat: NOTHING })).toEqual(["Drive", "Contingency", "Total"]);
    expect(names({ ...whole, vat: exactly(0.5) })).toEqual(["Drive", "Contingency", "VAT", "Total"]);
    expect(names(open)).toEqual(["Drive", "Contingency", "VAT"]);
  });
  it("has a name for every column", () => {
    const { columns, rows } = quoteTable({
      currency: "",
      packs: [{ quote: whole, electricity: [], yearly: [], missing: [] }],
    });
    for (const row of rows) expect(row).toHaveLength(columns.length);
  });
});

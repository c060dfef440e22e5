import { expect, it } from "vitest";
import { priceBars } from "../../../web/charts/priceBars.ts";
import { drawing } from "../../support/drawing.ts";

const lines = { columns: [{ name: "way", label: "Way" }], rows: [["A"]] };
const bar = { name: "A", price: { value: 11_000, low: 10_000, high: 12_000 }, index: 0 };

it("says each price from its low to its high end, with the lines of the quotes as its table", () => {
  const { alt, table, read } = priceBars([bar], lines, "EUR", drawing());
  expect(alt).toMatch(/^Price of each way: A .*10.*12.*EUR\.$/);
  expect(table).toBe(lines);
  expect(read?.(0).where).toBe("A");
});

it("says that no pack has its whole price yet", () => {
  expect(priceBars([], lines, "EUR", drawing()).alt).toMatch(/No pack has its whole price yet/);
});

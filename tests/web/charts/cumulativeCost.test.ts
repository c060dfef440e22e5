import { expect, it } from "vitest";
import { cumulativeCost } from "../../../web/charts/cumulativeCost.ts";
import { drawing } from "../../support/drawing.ts";

const span = (value: number) => ({ value, low: 0.9 * value, high: 1.1 * value });
const input = {
  pack: { name: "13 kWh", spent: [10_000, 10_500, 11_000].map(span) },
  other: { name: "as it is", spent: [0, 3000, 6000].map(span) },
  currency: "EUR",
};

it("has what is spent after each year, with its band", () => {
  const { table, read } = cumulativeCost(input, drawing());
  expect(table.rows).toContainEqual([2, "as it is", 6000, 5400, expect.closeTo(6600, 9), "EUR"]);
  expect(read?.(0).where).toBe("at once");
  expect(read?.(2).where).toBe("after 2 years");
});

it("says when the pack has paid for itself, or that it has not", () => {
  expect(cumulativeCost(input, drawing()).alt).toMatch(/the pack’s line does not come down to the alternative’s\.$/);
  expect(cumulativeCost({ ...input, paidBack_years: 1.5 }, drawing()).alt).not.toMatch(/does not come down/);
});

it("shows nothing of no year", () => {
  const none = { ...input, pack: { name: "a", spent: [span(1)] }, other: { name: "b", spent: [span(1)] } };
  expect(cumulativeCost(none, drawing()).alt).toMatch(/No year is looked ahead/);
});

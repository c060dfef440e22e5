import { expect, it } from "vitest";
import { daysDistribution } from "../../../web/charts/daysDistribution.ts";
import { drawing } from "../../support/drawing.ts";

const days_m = [10_000, 20_000, 30_000, 40_000];
const input = { days_m, usual_m: 30_000, longest_m: 90_000, packs: [{ name: "small", index: 0, range_m: 25_000 }] };

it("counts every day once", () => {
  const { table } = daysDistribution(input, drawing());
  const counts = table.rows.filter(([, , , what]) => what === "days as long as that").map(([, , days]) => Number(days));
  expect(counts.reduce((a, b) => a + b)).toBe(4);
  // The usual day of 30 km is as long as or longer than three of them.
  expect(table.rows).toContainEqual([0, 30, 3, "days no longer than: usual day"]);
});

it("reads how many days are no longer than a place along it", () => {
  const values = daysDistribution(input, drawing()).read?.(25_000).values;
  expect(values).toContainEqual({ label: "days no longer", text: "2 of 4" });
});

it("says that no day is known", () => {
  expect(daysDistribution({ ...input, days_m: [] }, drawing()).alt).toMatch(/No day is known yet/);
});

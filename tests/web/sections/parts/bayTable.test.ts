import { expect, it } from "vitest";
import { Weights } from "../../../../shared/job/schema/weights.ts";
import { bayTable } from "../../../../web/sections/parts/bayTable.ts";
import { bareJob } from "../../../support/bareCar.ts";

const job = bareJob({ module: { length_mm: 300, width_mm: 200, height_mm: 150 }, pack: { seriesModules: 8 } });
const weights = (room: object) =>
  Weights.parse({
    wheelbase_mm: 2300,
    weighed: { front_kg: 500, rear_kg: 500 },
    boxes: [{ name: "boot", place_mm: 2000, share_frac: 1, ...room }],
  });

it("says how many modules go into each box, by how they stand, and by its share", () => {
  const [table] = bayTable(job, weights({ length_mm: 650, width_mm: 450, height_mm: 320 }), job.packs[0], "metric");
  // 10 mm free all round leave 630 by 430 by 300 mm: two by two by two, upright.
  expect(table.rows[0][0]).toBe("boot");
  expect(table.rows[0].at(-1)).toBe("8 modules");
  expect(table.note).toMatch(/^A module is 300 mm by 200 mm by 150 mm high/);
});

it("is nothing where no box has its room typed", () => {
  expect(bayTable(job, weights({}), job.packs[0], "metric")).toEqual([]);
});

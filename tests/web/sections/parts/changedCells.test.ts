import { expect, it } from "vitest";
import type { Beside } from "../../../../sim/index.ts";
import { changedCells } from "../../../../web/sections/parts/changedCells.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
const cells = (changed: readonly string[]) =>
  changedCells({ prediction: { state: { ...job, usualDay_km: 30 } }, changed } as unknown as Beside, job, "metric");

it("has the value then and the value now, by the words of the field", () => {
  expect(cells(["usualDay_km"])[0].slice(1)).toEqual(["30 km", "40 km"]);
  expect(cells(["packs"])[0].slice(1)).toEqual(["a list of 2", "a list of 2"]);
  expect(cells(["engine"])[0].slice(1)).toEqual(["none", "none"]);
});

it("counts what is beyond twenty, and where values come from apart", () => {
  const many = Array.from({ length: 22 }, (_, i) => `packs.${i}.floor_frac`);
  const rows = cells([...many, "origins.usualDay_km"]);
  expect(rows).toHaveLength(22);
  expect(rows[20]).toEqual(["2 more values", "", "other values"]);
  expect(rows[21]).toEqual(["Where a value comes from", "", "said anew"]);
});

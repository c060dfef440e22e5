import { expect, it } from "vitest";
import { allowedRange } from "../../../../web/editing/fieldTable/allowedRange.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();

it("is the schema's own, through lists, defaults and the kind that the job has", () => {
  expect(allowedRange(job, "vehicle.kerb_kg")).toEqual({ min: 0, max: 20_000 });
  expect(allowedRange(job, "packs.1.floor_frac")).toEqual({ min: 0, max: 0.95 });
  expect(allowedRange(job, "motor.loss.efficiency_frac")).toEqual({ min: 0.2, max: 1 });
});

it("is none of words, of groups and of what this kind does not have", () => {
  for (const path of ["vehicle.name", "vehicle", "motor.loss.copper_coeff"])
    expect(allowedRange(job, path)).toBeUndefined();
});

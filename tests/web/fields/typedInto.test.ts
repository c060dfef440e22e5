import { expect, it } from "vitest";
import { withPath } from "../../../shared/job/path.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { createFieldContext } from "../../../web/fields/fieldContext.ts";
import { typedInto } from "../../../web/fields/typedInto.ts";
import { demoJob } from "../../support/demoJob.ts";
import { noRoads } from "../../support/noRoads.ts";

const power = "accessories.items.0.power_W";
const supply = "accessories.items.0.supply";

function into(path: string, text: string, units: "metric" | "american" = "metric") {
  const job = withPath(demoJob(), "units", units);
  const context = createFieldContext(createJobEditor({ job, drafts: {} }), noRoads);
  const before = { job, drafts: {} };
  return { before, after: typedInto(context, before, path, text) };
}

it("changes nothing by an empty text", () => {
  const { before, after } = into(power, "  ");
  expect(after).toBe(before);
});

it("takes a choice by its key or its words, in capitals or not, and refuses any other word", () => {
  expect(into(supply, "PACK").after.job.accessories.items[0].supply).toBe("pack");
  expect(into(supply, "The Pack").after.job.accessories.items[0].supply).toBe("pack");
  const { before, after } = into(supply, "mains");
  expect(after.job).toBe(before.job);
  expect(after.drafts[supply]).toEqual({
    typed: "mains",
    problem: "found mains, one of 12 V battery, the pack wanted",
  });
});

it("takes a quantity with its text and its band, and keeps what cannot be read beside the job with the reason", () => {
  const { job } = into(power, "0.2 kW ± 10 %").after;
  expect(job.accessories.items[0].power_W).toBe(200);
  expect(job.origins[power]).toMatchObject({ typed: "0.2 kW ± 10 %", plusMinus_frac: expect.closeTo(0.1, 9) });
  const { after } = into(power, "bright");
  expect(after.job.accessories.items[0].power_W).toBe(120);
  expect(after.drafts[power]).toMatchObject({ typed: "bright", problem: expect.stringMatching(/\w/) });
});

it("keeps no bare number as text in other units than those of the job file: alone it would mean another value", () => {
  const path = "vehicle.tyres.loadedRadius_mm";
  const { job } = into(path, "11", "american").after;
  expect(job.vehicle.tyres.loadedRadius_mm).toBeCloseTo(11 * 25.4, 9);
  expect(job.origins[path]?.typed).toBeUndefined();
  expect(into(path, "285").after.job.origins[path]?.typed).toBe("285");
});

it("takes the usual value for what is written as unknown, and nothing where there is none", () => {
  const { job } = into("vehicle.tyres.rolling_coeff", "unknown").after;
  expect(job.vehicle.tyres.rolling_coeff).toBe(0.013);
  expect(job.origins["vehicle.tyres.rolling_coeff"]?.from).toBe("usual");
  const { before, after } = into("usualDay_km", "unknown");
  expect(after).toBe(before);
});

import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import theCar from "../../../web/sections/theCar.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();
const values = sectionValues(job);

/** The working for a car whose first packs make it weigh so much; it may weigh 1330 kg and has 110 kg aboard. */
function told(masses_kg: readonly number[], vehicle: Partial<Job["vehicle"]> = {}) {
  const candidates = masses_kg.map((testMass_kg, i) => ({ ...values.runs.candidates[i], testMass_kg }));
  const result = theCar.compute({
    job: { ...job, vehicle: { ...job.vehicle, ...vehicle } },
    runs: { ...values.runs, candidates },
    units: "metric",
  });
  const [table] = theCar.plot(result, drawing());
  return {
    sentence: theCar.sentence(result),
    summary: theCar.summary?.(result),
    spare: "rows" in table ? table.rows.map((row) => row.at(-1)) : [],
  };
}

it("says what is left to the plated weight, and by how much it is passed", () => {
  // 1330 - 1299 = 31; 1352 - 1330 = 22; at the plate it is not over.
  expect(told([1299, 1352, 1330]).spare).toEqual(["31 kg", "over by 22 kg", "0 kg"]);
  expect(told([1299], { gross_kg: undefined }).spare).toEqual(["plate not known"]);
});

it("says from which mass to which, whatever the order of the packs", () => {
  const { sentence, summary } = told([1210, 1180]);
  expect(sentence).toBe("With 110 kg of people and luggage aboard it weighs from 1180 kg (13 kWh) to 1210 kg (8 kWh).");
  expect(summary).toBe("1180 kg to 1210 kg as driven");
});

it("says one mass for a single pack", () => {
  const { sentence, summary } = told([1210]);
  expect(sentence).toBe("With 110 kg of people and luggage aboard it weighs 1210 kg (8 kWh).");
  expect(summary).toBe("1210 kg as driven");
});

import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { daySlider } from "../../../../web/forms/pack/daySlider.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const page = (change: Partial<Job>) => formPage({ ...demoJob(), ...change }, daySlider);
const slider = "#slider-day";

it.each([
  ["metric", 38, 74, "150"], // 1.5 × 74 = 111 km, in whole fifties
  ["british", 38, 74, "100"], // 74 km are 46 miles, 1.5 × 46 = 69 miles
  ["metric", 38, undefined, "100"], // 57 km, and 100 at least
  ["metric", 300, 74, "450"],
] as const)("reaches far enough in %s units for %s and %s km", (units, usualDay_km, longestDay_km, most) => {
  expect(page({ units, usualDay_km, longestDay_km }).at(slider).max).toBe(most);
});

it("stands at the day in whole steps of the reader's unit, and says it with its unit", () => {
  const { at, said } = page({ units: "british", usualDay_km: 38 });
  expect(at(slider).value).toBe("24"); // 23.6 miles
  expect(at(slider).getAttribute("aria-valuetext")).toBe(said("output"));
  expect(said("output")).toContain("miles");
});

it("puts the day into the job in kilometres, all of one push as one step", () => {
  const { type, fire, job, jobEditor } = page({ units: "british" });
  for (const miles of ["25", "30", "20"]) type(slider, miles);
  fire(slider, "change");
  expect(job().usualDay_km).toBeCloseTo(20 * 1.609344, 9);
  expect(job().origins["usualDay_km"]?.typed).toBe("20 miles");
  jobEditor.undo();
  expect(job().usualDay_km).toBe(demoJob().usualDay_km);
});

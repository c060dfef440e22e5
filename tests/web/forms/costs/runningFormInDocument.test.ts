import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { withPath } from "../../../../shared/job/path.ts";
import { runningForm } from "../../../../web/forms/costs/runningForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const yearly = (job: Job) => job.costs?.running?.yearly.map(({ distance_km }) => distance_km);
const bare = (usualDay_km: number): Job => ({ ...withPath(demoJob(), "costs.running", undefined), usualDay_km });

it.each([
  [38, 8600], // 38 × 225 days = 8550, in whole hundreds
  [0.2, 100], // 45 km, and a hundred at least
])("starts a usual day of %s km at %s km a year", (day_km, year_km) => {
  const { press, job } = formPage(bare(day_km), runningForm);
  press(/^Add the running costs$/);
  expect(yearly(job())).toEqual([year_km]);
  expect(job().costs?.running).toMatchObject({ fuel: "petrol", use_l100km: 9.5 });
});

it("adds a distance like the last one, and keeps one at least", () => {
  const { press, job, buttons } = formPage(demoJob(), runningForm);
  press(/^Add a distance$/);
  expect(yearly(job())).toEqual([8000, 4000, 16000, 16000]);
  for (const which of [4, 3, 1]) press(new RegExp(`^Remove distance ${which}$`));
  expect(yearly(job())).toEqual([4000]);
  expect(buttons()).not.toContain("Remove distance 1");
});

import { expect, it } from "vitest";
import { chargePlan, driveJob, roadTrace } from "../../../sim/index.ts";
import { chargeFact, placeWords } from "../../../web/sheet/chargeFacts.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";

const job = demoJob();
const { candidates } = driveJob(job, roadTrace(job.roads[0], cycleTexts));

it("says winter, night and the other places of the client's own supplies", () => {
  const plan = chargePlan(job, candidates);
  expect(chargeFact(plan.rows[1], "metric")).toMatch(
    /^usual day in winter 4 h; 23:30 to 7:30 gives \d\d km\. Wall unit, if one were fitted: 3¼ h, empty to full 6 h$/,
  );
  expect(placeWords(plan.supplies[0], "metric")).toBe("Garage, household socket, 2.2 kW from the wall");
});

it("says a stop in its place", () => {
  const plan = chargePlan({ ...job, charger: { ...job.charger, max_V: 120 } }, candidates);
  expect(chargeFact(plan.rows[1], "metric")).toMatch(/^The charger goes to 120 V/);
});

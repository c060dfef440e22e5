import { expect, it } from "vitest";
import type { Job } from "../../../shared/job/job.ts";
import chapter from "../../../web/chapters/chargeTimes.ts";
import type { Values } from "../../../web/sections/parts/values.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob();

/** The chapter of the demo with other supplies or another charger, for one of its packs. */
function told(changes: Partial<Job>, view: Partial<Values> = {}) {
  const result = chapter.compute(sectionValues({ ...job, ...changes }, { packIndex: 1, ...view }));
  return { sentence: chapter.sentence(result), figure: chapter.plot(result, drawing(480)) };
}

it("says how long the usual day takes, whether the cheap hours are enough, how far they go, and what sets the pace", () => {
  const { sentence, figure } = told({});
  expect(sentence).toMatch(
    /^With 13 kWh a usual day is back in 3¼ h at Garage, household socket, from empty in 6 h\. It fits into the cheap hours from 23:30 to 7:30, in winter too; from empty they give \d\d km, the pack full\. The charger sets the pace: a bigger supply changes nothing\.$/,
  );
  expect(figure?.chart.alt).toMatch(/Wall unit, if one were fitted: usual day 3¼ h/);
});

it("speaks the reader's units", () => {
  expect(told({}, { units: "british" }).sentence).toMatch(/they give \d\d miles/);
});

it("says where the night is too short, and where a bigger supply would help", () => {
  const [garage] = job.supplies;
  const { sentence } = told({
    supplies: [{ ...garage, current_A: 6, hours: { from: "23:00", to: "1:00" }, cheap: undefined }],
  });
  expect(sentence).toMatch(/The hours there from 23:00 to 1:00 \(2 h\) are too short for it/);
  expect(sentence).toMatch(/The supply sets the pace: a bigger one shortens it, up to the charger’s 2 kW\.$/);
});

it("says that a day takes the whole pack", () => {
  expect(told({}, { packIndex: 0 }).sentence).not.toMatch(/takes all of/);
  expect(told({ usualDay_km: 200 }).sentence).toMatch(/^A usual day takes all of 13 kWh: 6 h at Garage/);
});

it("says a stop in the place of hours, and draws nothing", () => {
  const { sentence, figure } = told({ charger: { ...job.charger, max_V: 120 } });
  expect(sentence).toMatch(/^The charger goes to 120 V and this pack has 126 V when full: it is never charged full\./);
  expect(figure).toBeUndefined();
});

it("goes on without a supply: a household socket stands in", () => {
  expect(told({ supplies: [] }).sentence).toMatch(/is back in 3¼ h at Household socket, 10 A, from empty in 6 h\. The/);
});

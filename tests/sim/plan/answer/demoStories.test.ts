import { expect, it } from "vitest";
import { drivenRoad } from "../../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../../shared/job/job.ts";
import {
  type Answer,
  answerFor,
  driveJob,
  packsInQuestion,
  roadTrace,
  unknownsOfPacks,
} from "../../../../sim/index.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

/** The answer on a demo's own road, with what is not known. */
function answered(job: Job): Answer {
  const road = roadTrace(drivenRoad(job), cycleTexts);
  const { candidates } = driveJob(job, road);
  return answerFor(job, candidates, unknownsOfPacks(job, packsInQuestion(job, candidates), road));
}

it("the first demo's client asks for twice the pack that is enough with the whole band, and one row is not enough", () => {
  const job = demoJob(0);
  const { packs, recommended = 0 } = answered(job);
  const verdicts = packs.map(({ verdict }) => verdict);
  expect(verdicts).toEqual(["not enough", "enough", "more than enough", "more than enough", "more than enough"]);
  const asked = packs.findIndex(({ name }) => job.use.includes(name));
  expect(packs[asked].usable_kWh).toBeGreaterThan(2 * packs[recommended].usable_kWh);
});

it("the second's is only just enough, and one measurement would settle it", () => {
  const { packs, recommended = 0, enough, settlements } = answered(demoJob(1));
  expect(packs.map(({ verdict }) => verdict)).toEqual(["not enough", "not enough", "only just", "enough"]);
  expect([recommended, enough]).toEqual([2, 3]);
  expect(settlements[recommended]).toMatchObject({ measurement: { id: "weighing" } });
  expect(settlements[recommended]?.next).toBeUndefined();
  expect(settlements[recommended]?.rest.low).toBeGreaterThanOrEqual(0);
});

it("the third's day is beyond every pack that goes in", () => {
  const { packs, recommended } = answered(demoJob(2));
  expect(packs.map(({ verdict }) => verdict)).toEqual(packs.map(() => "not enough"));
  expect(recommended).toBe(packs.length - 1);
});

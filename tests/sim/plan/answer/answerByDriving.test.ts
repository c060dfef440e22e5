import { expect, it } from "vitest";
import { resultOf } from "../../../../sim/math/resultOf.ts";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { answerByDriving, SAMPLED, sampleRanges } from "../../../../sim/plan/answer/answerByDriving.ts";
import { packsInQuestion, unknownsOfPacks } from "../../../../sim/plan/answer/unknownsOfPacks.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { sampleRange } from "../../../../sim/plan/vary/sampleRange.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const road = traceOf([
  [0, 0],
  [15, 50],
  [200, 50],
  [215, 0],
  [230, 0],
]);

it("drives many variants of the pack whose verdict hangs on them, and of no other", () => {
  const whole = demoJob(0);
  const { candidates } = driveJob(whole, road);
  const first = answerFor(whole, candidates, unknownsOfPacks(whole, packsInQuestion(whole, candidates), road));
  // The usual day as long as the band of the second pack is low: its verdict hangs on a metre.
  const low_km = first.packs[1].range?.tenYearsWinter.low ?? Number.NaN;
  const job = { ...whole, usualDay_km: low_km };
  const answer = answerByDriving(job, candidates, road);
  expect(answer.packs.map(({ sampled }) => sampled?.variants)).toEqual(
    answer.packs.map((_, i) => (i === 1 ? SAMPLED.variants : undefined)),
  );
  const { ranges_km } = resultOf(sampleRange(job, 1, road, "tenYearsWinter", SAMPLED));
  const home = ranges_km.filter((range_km) => range_km >= low_km).length / SAMPLED.variants;
  expect(answer.packs[1].sampled?.home_frac).toBe(home);
  expect(answer.packs[1].verdict).toBe(home >= 0.95 ? "enough" : "only just");
});

it("goes from pack to pack, and says how much of all is done", () => {
  const job = { ...demoJob(0), origins: {} };
  const steps = sampleRanges(job, [0, 2], road);
  expect(steps.next().value).toBeCloseTo(1 / SAMPLED.variants / 2, 12);
  const found = resultOf(sampleRanges(job, [1], road));
  expect(found.map((each) => each?.ranges_km.length)).toEqual([
    undefined,
    SAMPLED.variants,
    undefined,
    undefined,
    undefined,
  ]);
});

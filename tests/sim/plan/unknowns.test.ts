import { expect, it } from "vitest";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../shared/job/job.ts";
import { withPath } from "../../../shared/job/path.ts";
import { answerFor } from "../../../sim/plan/answer/answer.ts";
import { packsInQuestion, scaledUnknowns, unknownsOfPacks } from "../../../sim/plan/answer/unknownsOfPacks.ts";
import { driveJob } from "../../../sim/plan/drive/driveJob.ts";
import { roadTrace } from "../../../sim/plan/drive/roadTrace.ts";
import { unknownsByEffect } from "../../../sim/plan/unknowns.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";
import { demoJob } from "../../support/demoJob.ts";
import { inventedCandidate, inventedUnknown } from "../../support/inventedCandidate.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const town = cycleTrace("ece-15", cycleTexts);
const job = inventedJob();
const found = (origins: Job["origins"], base = job) => unknownsByEffect({ ...base, origins }, 0, town);

it("drives the car with each open value at either end of its band, the largest effect first", () => {
  const range_km = (changed: Job) => driveJob(changed, town).candidates[0].range_km;
  const [first, second] = found({
    "vehicle.roadLoad.drag_coeff": { from: "guessed", plusMinus_frac: 0.01 },
    "vehicle.tyres.rolling_coeff": { from: "usual" },
  });
  expect(first).toMatchObject({ path: "vehicle.tyres.rolling_coeff", value: 0.012, plusMinus_frac: 0.1 });
  expect([first?.low, first?.high]).toEqual([0.012 * 0.9, 0.012 * 1.1]);
  expect(first?.atLow_km).toBe(range_km(withPath(job, "vehicle.tyres.rolling_coeff", 0.012 * 0.9)));
  expect(first?.atHigh_km).toBe(range_km(withPath(job, "vehicle.tyres.rolling_coeff", 0.012 * 1.1)));
  expect(first?.atLow_km).toBeGreaterThan(first?.atHigh_km ?? 0);
  expect(second?.path).toBe("vehicle.roadLoad.drag_coeff");
});

it("leaves out what is known, what is asked, what does not move the car, and counts", () => {
  const guessed = { from: "guessed" as const };
  const origins: Job["origins"] = {
    "vehicle.kerb_kg": { from: "measured", plusMinus_frac: 0.01 },
    usualDay_km: guessed,
    "charger.efficiency_frac": guessed,
    "packs.0.parallelModules": guessed,
    "vehicle.name": guessed,
  };
  expect(found(origins)).toEqual([]);
});

it("keeps a share at most 1", () => {
  const [share] = found({ "driveline.finalDriveEfficiency_frac": { from: "usual", plusMinus_frac: 0.1 } });
  expect(share?.high).toBe(1);
});

it("drives nothing for a pack that may not be used", () => {
  const tooHigh: Job = {
    ...job,
    controller: { ...job.controller, max_V: 1 + job.controller.min_V },
    origins: { "vehicle.load_kg": { from: "guessed" } },
  };
  const asked = packsInQuestion(tooHigh, driveJob(tooHigh, town).candidates);
  expect(asked).toEqual([]);
  expect(unknownsOfPacks(tooHigh, asked, town)).toEqual([[], []]);
});

it("gives the vineyard's pick-up a band that was driven: slippery gravel is said, not mirrored into kilometres", () => {
  const pickUp = demoJob(2);
  const terraces = roadTrace(drivenRoad(pickUp), cycleTexts);
  const { candidates } = driveJob(pickUp, terraces);
  const { packs } = answerFor(
    pickUp,
    candidates,
    unknownsOfPacks(pickUp, packsInQuestion(pickUp, candidates), terraces),
  );
  for (const { range, mayFail } of packs) {
    expect(mayFail).toEqual([{ path: "environment.grip_coeff", value: 0.35 }]);
    const { value = Number.NaN, low, high } = range?.new ?? {};
    expect(low).toBeGreaterThan(0.7 * value);
    expect(high).toBeLessThan(1.5 * value);
    expect((high ?? 0) - value).not.toBeCloseTo(value - (low ?? 0), 1);
  }
});

it("stands in for what was not driven again by the same shares of the new range", () => {
  const before = [[inventedUnknown(100, 20, 10)]];
  expect(scaledUnknowns(before, [inventedCandidate(5)])).toEqual([
    [{ ...before[0]?.[0], atLow_km: 60, atHigh_km: 45 }],
  ]);
  expect(scaledUnknowns(before, [inventedCandidate(5), inventedCandidate(6)])).toBeUndefined();
});

it("takes a value typed as a band for open within that band, and one that is only typed for known", () => {
  const drag = "vehicle.roadLoad.drag_coeff";
  expect(found({ [drag]: { from: "typed", plusMinus_frac: 0.13 } })).toMatchObject([
    { path: drag, plusMinus_frac: 0.13 },
  ]);
  expect(found({ [drag]: { from: "typed" } })).toEqual([]);
});

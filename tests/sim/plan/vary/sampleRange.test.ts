import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { resultOf } from "../../../../sim/math/resultOf.ts";
import { sampledBand } from "../../../../sim/plan/answer/sampledRange.ts";
import { drivenRange } from "../../../../sim/plan/unknowns.ts";
import { sampleRange } from "../../../../sim/plan/vary/sampleRange.ts";
import { varyPack } from "../../../../sim/plan/vary/varyPack.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const road = traceOf([
  [0, 0],
  [15, 50],
  [200, 50],
  [215, 0],
  [230, 0],
]);
const draw = { variants: 48, seed: 1 };
const openJob = (origins: Job["origins"]): Job => ({ ...demoJob(0), origins });
const rolling = { "vehicle.tyres.rolling_coeff": { from: "guessed" as const, plusMinus_frac: 0.3 } };

it("has the range as it is in every variant where nothing is open", () => {
  const job = openJob({});
  const { range_km } = drivenRange(prepare(job, job.packs[1]), road);
  const { ranges_km } = resultOf(sampleRange(job, 1, road, "new", { variants: 16, seed: 1 }));
  expect(ranges_km).toHaveLength(16);
  for (const each of ranges_km) expect(each).toBeCloseTo(range_km, 9);
});

it("has the twentieths of the same variants that are driven in every condition", () => {
  const job = openJob(rolling);
  const all = resultOf(varyPack(job, 1, road, draw));
  for (const condition of ["new", "winter", "tenYearsWinter"] as const) {
    const sampled = resultOf(sampleRange(job, 1, road, condition, draw));
    expect(sampled.ranges_km).toEqual(sampled.ranges_km.toSorted((a, b) => a - b));
    const { low, high } = sampledBand(sampled.ranges_km[24], sampled);
    expect(low - job.usualDay_km).toBeCloseTo(all.left_km?.[condition].p5 ?? Number.NaN, 6);
    expect(high - job.usualDay_km).toBeCloseTo(all.left_km?.[condition].p95 ?? Number.NaN, 6);
  }
});

it("goes by the factors of each variant where a job knows winter by them", () => {
  const { conditions: _driven, ...byFactor } = openJob({ "allowance.aged_frac": { from: "usual" } });
  const of = (condition: "winter" | "tenYearsWinter") =>
    resultOf(sampleRange(byFactor, 1, road, condition, draw)).ranges_km;
  // An old pack holds 0.675 to 0.825 of its charge: each forty-eighth of that has one variant.
  const [winter_km] = of("winter");
  of("tenYearsWinter").forEach((range_km, i) => {
    expect(range_km / winter_km).toBeGreaterThanOrEqual(0.675 + (0.15 * i) / 48 - 1e-9);
    expect(range_km / winter_km).toBeLessThanOrEqual(0.675 + (0.15 * (i + 1)) / 48 + 1e-9);
  });
});

it("has no kilometres where the car does not drive the road", () => {
  const job = openJob(rolling);
  const dead = { ...job, controller: { ...job.controller, torqueCap_Nm: 0.01 } };
  expect(new Set(resultOf(sampleRange(dead, 1, road, "new", draw)).ranges_km)).toEqual(new Set([0]));
});

it("says after each variant how much is done, and can be given up there", () => {
  const steps = sampleRange(openJob(rolling), 0, road, "new", { variants: 100, seed: 1 });
  expect([steps.next().value, steps.next().value]).toEqual([0.01, 0.02]);
});

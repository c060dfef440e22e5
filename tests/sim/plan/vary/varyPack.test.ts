import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { openValues } from "../../../../sim/plan/unknowns.ts";
import type { Draw } from "../../../../sim/plan/vary/variants.ts";
import { varyPack } from "../../../../sim/plan/vary/varyPack.ts";
import { varyWords } from "../../../../sim/plan/vary/varyWords.ts";
import { runSteps } from "../../../../sim/route/log/steps.ts";
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
/** A job of which only these values are open, and that knows winter by a factor: what that does is a closed form. */
const openJob = (origins: Job["origins"], changes: Partial<Job> = {}): Job => {
  const { conditions: _driven, ...byFactor } = demoJob(0);
  return { ...byFactor, origins, ...changes };
};
const varied = (job: Job, draw: Draw = { variants: 64, seed: 1 }) => runSteps(varyPack(job, 1, road, draw));

describe("a pack in many variants", () => {
  it("has no spread where nothing is open: the range as it is", () => {
    const job = openJob({});
    const { left_km, driving, home_frac, inputs } = varied(job, { variants: 16, seed: 1 });
    const { distance_m } = rangeOn(prepare(job, job.packs[1]), road);
    expect(left_km?.new.p5).toBeCloseTo(distance_m / 1000 - job.usualDay_km, 9);
    expect(left_km?.new.p95).toBeCloseTo(left_km?.new.p5 ?? 0, 9);
    expect([driving, home_frac.new, inputs.length]).toEqual([16, 1, 0]);
  });

  it("is nearly linear in one share: percentiles of its even band", () => {
    // What an old pack holds goes straight into the range: 0.675 to 0.825 of it, evenly.
    const job = openJob({ "allowance.aged_frac": { from: "usual" } });
    const { left_km, inputs } = varied(job, { variants: 400, seed: 2 });
    const winter = (left_km?.winter.p50 ?? 0) + job.usualDay_km;
    for (const [found, share] of [
      [left_km?.tenYearsWinter.p5, 0.05],
      [left_km?.tenYearsWinter.p50, 0.5],
      [left_km?.tenYearsWinter.p95, 0.95],
    ] as const) {
      // One variant falls into each four-hundredth of the band.
      expect(Math.abs((found ?? 0) + job.usualDay_km - winter * (0.675 + share * 0.15))).toBeLessThan(
        winter * 0.15 * 0.0051,
      );
    }
    expect(inputs[0].rank_coeff).toBeCloseTo(1, 9);
    expect(inputs[0].left_frac).toBeLessThan(1e-3);
    expect(inputs[0].gain_km).toBeCloseTo((left_km?.tenYearsWinter.p95 ?? 0) - (left_km?.tenYearsWinter.p5 ?? 0), 2);
  });

  it("has what the log leaves open of the road's energy as one more, a tenth of it beyond either end", () => {
    const open = { ...road, spread: { energy_ratio: { low: 0.9, high: 1.1 } } } as typeof road;
    const job = openJob({});
    const { left_km, inputs } = runSteps(varyPack(job, 1, open, { variants: 200, seed: 3 }));
    const { distance_m } = rangeOn(prepare(job, job.packs[1]), open);
    // Twentieths of a normal distribution with tenths at 0.9 and 1.1 lie 1.6449 / 1.2816 as far out. A two-hundredth of it is there 0.0038 wide.
    const out = (0.1 * 1.6449) / 1.2816;
    for (const [left, ratio] of [
      [left_km?.new.p5, 1 + out],
      [left_km?.new.p50, 1],
      [left_km?.new.p95, 1 - out],
    ] as const) {
      const byHand_km = distance_m / 1000 / ratio;
      expect(Math.abs((left ?? 0) + job.usualDay_km - byHand_km)).toBeLessThan(0.0045 * byHand_km);
    }
    expect(inputs.map(({ open: of }) => of)).toEqual([undefined]);
    expect(inputs[0].rank_coeff).toBeCloseTo(-1, 9);
  });

  it("ranks what is open by what it does, with the sign of it", () => {
    const { inputs } = varied(
      openJob({
        "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 0.3 },
        "motor.rotorInertia_kgm2": { from: "guessed", plusMinus_frac: 0.05 },
      }),
    );
    expect(inputs.map(({ open }) => open?.path)).toEqual(["vehicle.tyres.rolling_coeff", "motor.rotorInertia_kgm2"]);
    expect(inputs[0].rank_coeff).toBeLessThan(-0.9);
    expect(Math.abs(inputs[1].rank_coeff)).toBeLessThan(0.4);
  });

  it("counts what the log leaves open of the road as one input more", () => {
    const spread = {
      energy_ratio: { low: 0.8, high: 1.25 },
      distance_ratio: { low: 1, high: 1 },
      climb_m: { low: 0, high: 0 },
    };
    const { inputs, left_km } = runSteps(varyPack(openJob({}), 1, { ...road, spread }, { variants: 64, seed: 1 }));
    expect(inputs).toHaveLength(1);
    expect(inputs[0].open).toBeUndefined();
    expect(inputs[0].rank_coeff).toBeCloseTo(-1, 9);
    expect(left_km?.new.p95).toBeGreaterThan((left_km?.new.p5 ?? 0) + 10);
  });

  it("is the same for the same seed, and other variants for another", () => {
    const job = openJob({ "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 0.3 } });
    expect(varied(job)).toEqual(varied(job));
    expect(varied(job, { variants: 64, seed: 2 }).left_km).not.toEqual(varied(job).left_km);
  });

  it("can be given up after any variant", () => {
    const steps = varyPack(openJob({}), 0, road, { variants: 100, seed: 1 });
    expect([steps.next().value, steps.next().value]).toEqual([0.01, 0.02]);
    expect(() => runSteps(steps, undefined, () => true)).toThrow("cancelled");
  });

  it("keeps a band wider than the value above nothing, so that no mass or drag is less than none", () => {
    const job = openJob({ "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 1.7 } });
    const [{ low, high, value }] = openValues(job);
    expect([low, high]).toEqual([0.01 * value, 2.7 * value]);
    const { left_km, driving } = varied(job);
    expect(driving).toBe(64);
    expect(Object.values(left_km?.tenYearsWinter ?? {}).every(Number.isFinite)).toBe(true);
  });
});

describe("what is said of it", () => {
  const words = (job: Job, draw?: Draw) => varyWords(varied(job, draw)).map((each) => messageIn(each, "metric"));
  it("says how often it comes home, between what, and what to measure first", () => {
    const open = { "vehicle.tyres.rolling_coeff": { from: "guessed" as const, plusMinus_frac: 0.3 } };
    const [first, second] = words(openJob(open, { usualDay_km: 48 }));
    expect(first).toMatch(
      /^13 kWh: on the usual day at ten years in winter it comes home in \d\d of 100 cases; what is left lies between \d+ km short and \d+ km left in nine cases of ten\.$/,
    );
    expect(second).toMatch(/^Measure first: a coast-down; what is left would be known better by \d+ km\.$/);
  });
  it("says so where nothing is open, and where the car never drives", () => {
    expect(words(openJob({}), { variants: 16, seed: 0 }).at(-1)).toBe("Nothing that the range hangs on is open.");
    const job = openJob({});
    const dead = { ...job, controller: { ...job.controller, torqueCap_Nm: 0.01 } };
    expect(words(dead, { variants: 16, seed: 0 })).toEqual([
      "13 kWh: the car does not drive this road in any of 16 variants.",
    ]);
  });
});

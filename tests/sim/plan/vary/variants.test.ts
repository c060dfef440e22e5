import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { drawVariants } from "../../../../sim/plan/vary/variants.ts";
import { traceOf } from "../../../support/bareCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const road = traceOf([
  [0, 0],
  [60, 50],
]);
const job: Job = {
  ...demoJob(0),
  origins: {
    "vehicle.tyres.rolling_coeff": { from: "guessed", plusMinus_frac: 0.3 },
    "vehicle.load_kg": { from: "usual", plusMinus_frac: 0.2 },
  },
};

it("draws each open value evenly from its band, and leaves all others as they are", () => {
  const { opens, drawn, jobAt } = drawVariants(job, road, { variants: 50, seed: 4 });
  expect(opens.map(({ path }) => path)).toEqual(Object.keys(job.origins));
  drawn.forEach((values, k) => {
    const { low, high } = opens[k];
    values
      .toSorted((a, b) => a - b)
      .forEach((value, i) => {
        expect(value).toBeGreaterThanOrEqual(low + ((high - low) * i) / 50 - 1e-9);
        expect(value).toBeLessThanOrEqual(low + ((high - low) * (i + 1)) / 50 + 1e-9);
      });
  });
  const seventh = jobAt(7);
  expect(seventh.vehicle.load_kg).toBe(drawn[1][7]);
  expect({ ...seventh, vehicle: undefined }).toEqual({ ...job, vehicle: undefined });
});

it("draws what a log leaves open of the road as normal errors, a tenth beyond either end", () => {
  const open = { ...road, spread: { energy_ratio: { low: 0.9, high: 1.2 } } } as typeof road;
  const { roadEnergy_ratio = [] } = drawVariants(job, open, { variants: 1000, seed: 4 });
  const share = (is: (ratio: number) => boolean) => roadEnergy_ratio.filter(is).length / 1000;
  // One variant in each thousandth: a count is off by one at most.
  expect(Math.abs(share((ratio) => ratio < 0.9) - 0.1)).toBeLessThanOrEqual(0.001);
  expect(Math.abs(share((ratio) => ratio < 1) - 0.5)).toBeLessThanOrEqual(0.001);
  expect(Math.abs(share((ratio) => ratio > 1.2) - 0.1)).toBeLessThanOrEqual(0.001);
});

import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { withPath } from "../../../../shared/job/path.ts";
import { startingWeights, weightsForm } from "../../../../web/forms/car/weightsForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";

const vehicle = (change: Partial<Job["vehicle"]>): Job => ({
  ...demoJob(),
  vehicle: { ...demoJob().vehicle, ...change },
});

it("starts from the car's own mass, balance, parts and load", () => {
  const job = vehicle({ kerb_kg: 1000, removed_kg: 160, added_kg: 120, load_kg: 110, gross_kg: 1330 });
  const weights = startingWeights(job);
  expect(weights.wheelbase_mm).toBe(2490);
  expect(weights.weighed).toEqual({ front_kg: 520, rear_kg: 480 }); // 52 % in front, as the demo says
  expect(weights.out.map(({ mass_kg }) => mass_kg)).toEqual([160]);
  expect(weights.in.map(({ mass_kg }) => mass_kg)).toEqual([120]);
  // 110 kg: a driver of 75 kg at 55 % of the wheelbase, and 35 kg more.
  expect(weights.driver).toEqual({ name: "driver", mass_kg: 75, place_mm: 1370 }); // 1369.5
  expect(weights.load.map(({ mass_kg }) => mass_kg)).toEqual([35]);
  expect(weights.plates).toEqual({ gross_kg: 1330 });
});

it("has axles that sum to the whole car, and nothing for what there is nothing of", () => {
  const job = vehicle({ kerb_kg: 953.4, removed_kg: 0, added_kg: 0, load_kg: 0, gross_kg: undefined });
  const weights = startingWeights(job);
  expect(weights.weighed).toEqual({ front_kg: 496, rear_kg: 457 }); // 0.52 × 953.4 = 495.8; 953 in all
  expect([weights.out, weights.in, weights.load, weights.driver]).toEqual([[], [], [], undefined]);
  expect(weights.plates).toEqual({});
});

it("puts half of an axle on each of its wheels, and sums wheels to axles again", () => {
  const { choose, job } = formPage(demoJob(), weightsForm);
  const kind = "#kind-weights-weighed";
  choose(kind, "corners");
  const half = { frontLeft_kg: 248.5, frontRight_kg: 248.5, rearLeft_kg: 227.75, rearRight_kg: 227.75 }; // of 497 and 455.5
  expect(job().weights?.weighed).toEqual(half);
  choose(kind, "axles");
  expect(job().weights?.weighed).toEqual({ front_kg: 497, rear_kg: 455.5 });
});

it("adds a box that holds nothing yet, so that the shares still sum to the pack, and keeps the last box", () => {
  const { press, job } = formPage(demoJob(), weightsForm);
  press(/^Add a box$/);
  expect(job().weights?.boxes.at(-1)).toEqual({ name: "box 3", place_mm: 0, share_frac: 0 });
  const one = [{ name: "only box", place_mm: 0, share_frac: 1 }];
  const single = formPage(withPath(demoJob(), "weights.boxes", one), weightsForm);
  expect(single.buttons()).not.toContain("Remove only box");
});

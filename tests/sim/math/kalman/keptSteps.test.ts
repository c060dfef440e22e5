import { expect, it } from "vitest";
import { keptSteps } from "../../../../sim/math/kalman/keptSteps.ts";

it("makes the matrices of each length once, to the part of the unit asked for", () => {
  const made: number[] = [];
  const steps = keptSteps(10, (step) => {
    made.push(step);
    return { transition: Float64Array.of(step), noise: new Float64Array(1) };
  });
  expect([1, 1.01, 2, 1, 2.04].map((step) => steps(step).transition[0])).toEqual([1, 1, 2, 1, 2]);
  expect(made).toEqual([1, 2]);
});

it("keeps no more than some thousands, and goes on after that", () => {
  let made = 0;
  const steps = keptSteps(1, (step) => {
    made++;
    return { transition: Float64Array.of(step), noise: new Float64Array(1) };
  });
  for (let step = 0; step < 20_000; step++) expect(steps(step).transition[0]).toBe(step);
  expect(made).toBe(20_000);
  expect(steps(3).transition[0]).toBe(3); // forgotten, and made again
  expect(made).toBe(20_001);
});

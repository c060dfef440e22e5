import { expect, it } from "vitest";
import { BackwardSampler } from "../../../../sim/math/kalman/backwardSampler.ts";
import { emptyMixtures, SwitchingFilter } from "../../../../sim/math/kalman/switchingFilter.ts";
import type { SwitchingModel } from "../../../../sim/math/kalman/switchingModel.ts";

/** A walk of steps of variance 1 from 0 ± 1, seen once, at its second event, as 3 ± √2. */
const walk: SwitchingModel = {
  states: 1,
  regimes: 1,
  events: 2,
  startWeight: Float64Array.of(1),
  startMean: Float64Array.of(0),
  startCovariance: Float64Array.of(1),
  positiveState: () => -1,
  passage: (_, _from, _to, fill) => {
    fill.transition[0] = 1;
    fill.noise[0] = 1;
    return 1;
  },
  measure: (k, observe) => {
    if (k === 1) observe(Float64Array.of(1), 2, 3);
  },
};

/** States of the draws at both events, where every draw of the normal distribution is the same. */
function drawn(normal: number) {
  const filter = new SwitchingFilter(walk);
  const kept = emptyMixtures(walk, 2);
  for (const k of [0, 1]) {
    filter.step(k);
    kept.weight.set(filter.now.weight, k);
    kept.mean.set(filter.now.mean, k);
    kept.covariance.set(filter.now.covariance, k);
  }
  const sampler = new BackwardSampler(walk, 3, { uniform: () => 0.5, normal: () => normal });
  sampler.step(1, kept, 1);
  const last = [...sampler.states];
  sampler.step(0, kept, 0);
  return { first: [...sampler.states], last };
}

it("draws the smoother's means where chance gives nought", () => {
  // Prior 0 ± √2 and measurement weigh alike: 1.5. Half of that was there a step before: P / (P + Q) = 1/2.
  const { first, last } = drawn(0);
  for (const state of last) expect(state).toBeCloseTo(1.5, 12);
  for (const state of first) expect(state).toBeCloseTo(0.75, 12);
});

it("scatters them by what is left open", () => {
  // One standard deviation up: variance 1 at the second event; there 2.5, and P - P²/(P + Q) = 1/2 about 1.25 at the first.
  const { first, last } = drawn(1);
  expect(last[0]).toBeCloseTo(2.5, 12);
  expect(first[0]).toBeCloseTo(1.25 + Math.SQRT1_2, 12);
});

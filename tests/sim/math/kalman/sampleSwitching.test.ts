import { describe, expect, it } from "vitest";
import { sampleSwitching } from "../../../../sim/math/kalman/sampleSwitching.ts";
import type { SwitchingModel } from "../../../../sim/math/kalman/switchingModel.ts";
import { chanceOf } from "../../../../sim/route/clean/draws/chance.ts";

/** A first-order process of variance 1 that keeps `keep` of itself from event to event, measured at each with the noise given. */
function wandering(
  values: readonly number[],
  keep: number,
  variance: number,
  counts = { passages: 0, measures: 0 },
): SwitchingModel {
  const sees = Float64Array.of(1);
  return {
    states: 1,
    regimes: 1,
    events: values.length,
    startWeight: Float64Array.of(1),
    startMean: Float64Array.of(0),
    startCovariance: Float64Array.of(1),
    positiveState: () => -1,
    passage(_k, _from, _to, fill) {
      counts.passages++;
      fill.transition[0] = keep;
      fill.noise[0] = 1 - keep * keep;
      return 1;
    },
    measure(k, observe) {
      counts.measures++;
      observe(sees, variance, values[k]);
    },
  };
}

describe("draws from the posterior", () => {
  it("have its mean and covariance, as conditioning the joint Gaussian gives them", () => {
    // Two events: prior covariance [1 k; k 1], measurements of variance r: P = (S^-1 + I/r)^-1, m = P z / r.
    const [keep, variance, z] = [0.8, 0.5, [1.2, -0.3]] as const;
    const determinant = 1 - keep * keep;
    const information = [1 / determinant + 1 / variance, -keep / determinant];
    const scale = information[0] ** 2 - information[1] ** 2;
    const covariance = [information[0] / scale, -information[1] / scale];
    const mean = [
      (covariance[0] * z[0] + covariance[1] * z[1]) / variance,
      (covariance[1] * z[0] + covariance[0] * z[1]) / variance,
    ];
    const draws = 20_000;
    const drawn = [new Float64Array(draws), new Float64Array(draws)];
    for (const _ of sampleSwitching(wandering(z, keep, variance), draws, chanceOf(3), (k, states) =>
      drawn[k].set(states),
    ));
    const average = (values: Float64Array) => values.reduce((sum, each) => sum + each, 0) / draws;
    const product = drawn[0].map((each, i) => (each - mean[0]) * (drawn[1][i] - mean[1]));
    // Four standard errors of 20,000 draws.
    const within = 4 * Math.sqrt(covariance[0] / draws);
    expect(Math.abs(average(drawn[0]) - mean[0])).toBeLessThan(within);
    expect(Math.abs(average(drawn[1]) - mean[1])).toBeLessThan(within);
    expect(Math.abs(average(product) - covariance[1])).toBeLessThan(
      (4 * Math.hypot(covariance[0], covariance[1])) / Math.sqrt(draws),
    );
  });
});

describe("the work", () => {
  it("grows as the log does and no faster: the same matrices an event, whatever its length", () => {
    const perEvent = [5000, 10_000, 40_000].map((events) => {
      const counts = { passages: 0, measures: 0 };
      const values = Array.from({ length: events }, (_, i) => Math.sin(i / 9));
      for (const _ of sampleSwitching(wandering(values, 0.9, 0.1, counts), 2, chanceOf(1), () => {}));
      return [counts.passages / events, counts.measures / events];
    });
    for (const [passages, measures] of perEvent) {
      // Forward, forward again piece by piece, and back.
      expect(passages).toBeLessThanOrEqual(3);
      expect(measures).toBeLessThanOrEqual(2);
    }
  });
});

import { describe, expect, it } from "vitest";
import { SwitchingFilter } from "../../../../sim/math/kalman/switchingFilter.ts";
import type { SwitchingModel } from "../../../../sim/math/kalman/switchingModel.ts";

/** One state that stands still, begins at 0 ± 1 in either of two regimes, and is measured with a variance of 1 where there is a value. */
function modelOf(parts: Partial<SwitchingModel>, values: readonly (number | undefined)[] = []): SwitchingModel {
  return {
    states: 1,
    regimes: 2,
    events: 2,
    startWeight: Float64Array.of(0.5, 0.5),
    startMean: Float64Array.of(0),
    startCovariance: Float64Array.of(1),
    positiveState: () => -1,
    passage: (_, from, to, fill) => {
      fill.transition[0] = 1;
      return from === to ? 1 : 0;
    },
    measure: (k, observe) => {
      const value = values[k];
      if (value !== undefined) observe(Float64Array.of(1), 1, value);
    },
    ...parts,
  };
}

const normalLog = (away: number, variance: number) => -0.5 * (away ** 2 / variance + Math.log(2 * Math.PI * variance));

describe("a filter of one regime", () => {
  const filter = new SwitchingFilter(modelOf({ regimes: 1, startWeight: Float64Array.of(1) }, [2, 2]));
  filter.step(0);
  filter.step(1);

  it("is Kalman's: the mean of prior and measurements of equal variance", () => {
    expect(filter.now.mean[0]).toBeCloseTo(4 / 3, 12);
    expect(filter.now.covariance[0]).toBeCloseTo(1 / 3, 12);
    expect(filter.now.weight[0]).toBe(1);
  });
  it("adds up the densities of its measurements", () => {
    // 2 seen from 0 ± √(1 + 1), then from 1 ± √(1/2 + 1).
    expect(filter.logLikelihood).toBeCloseTo(normalLog(2, 2) + normalLog(1, 1.5), 12);
  });
});

it("weighs regimes by what they foretold", () => {
  const apart = modelOf(
    {
      passage: (_, from, to, fill) => {
        fill.transition[0] = 1;
        fill.shift[0] = to === 0 ? 0 : 10;
        return from === to ? 1 : 0;
      },
    },
    [undefined, 4],
  );
  const filter = new SwitchingFilter(apart);
  filter.step(0);
  filter.step(1);
  // 4 is four from the one and six from the other, both with variance 2: e^(36/4 - 16/4).
  expect(filter.now.weight[0]).toBeCloseTo(1 / (1 + Math.exp(-5)), 12);
});

it("brings what comes into a regime together by mean and variance", () => {
  const joining = modelOf({
    passage: (_, from, to, fill) => {
      fill.transition[0] = 1;
      fill.shift[0] = 2 * from;
      return to === 0 ? 1 : 0;
    },
  });
  const filter = new SwitchingFilter(joining);
  filter.step(0);
  filter.step(1);
  // Halves at 0 ± 1 and 2 ± 1: mean 1, variance 1 + 1.
  expect([...filter.now.weight]).toEqual([1, 0]);
  expect(filter.now.mean[0]).toBeCloseTo(1, 12);
  expect(filter.now.covariance[0]).toBeCloseTo(2, 12);
});

it("keeps a state above zero where a regime says so", () => {
  const filter = new SwitchingFilter(modelOf({ regimes: 1, startWeight: Float64Array.of(1), positiveState: () => 0 }));
  filter.step(0);
  // Half of a standard normal distribution: mean √(2/π), variance 1 − 2/π. Seven digits are what the tail's series gives.
  expect(filter.now.mean[0]).toBeCloseTo(Math.sqrt(2 / Math.PI), 6);
  expect(filter.now.covariance[0]).toBeCloseTo(1 - 2 / Math.PI, 6);
  expect(filter.logLikelihood).toBeCloseTo(Math.log(0.5), 6);
});

it("says so where no regime is possible", () => {
  const filter = new SwitchingFilter(modelOf({ passage: () => 0 }));
  filter.step(0);
  expect(() => filter.step(1)).toThrow("no regime is possible at event 1");
});

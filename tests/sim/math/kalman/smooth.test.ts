import { describe, expect, it } from "vitest";
import { smooth } from "../../../../sim/math/kalman/smooth.ts";

describe("the smoother", () => {
  it("of a constant is the mean of its measurements at every event", () => {
    const values = [3, 5, 4, 8];
    const { mean } = smooth({
      states: 1,
      axes: 1,
      events: 4,
      startCovariance: Float64Array.of(1e9),
      startMean: Float64Array.of(0),
      transition(_, transition) {
        transition[0] = 1;
      },
      measure: (k, observe) => observe(Float64Array.of(1), 1, Float64Array.of(values[k])),
    });
    // The prior of variance 1e9 against four measurements of variance 1 shifts the mean by 5 / 4e9.
    for (const value of mean) {
      expect(value).toBeCloseTo(5, 8);
    }
  });

  it("of a straight line is the least-squares line through its measurements", () => {
    const values = [0.1, 1.9, 4.2, 5.8, 8.1];
    const { mean } = smooth({
      states: 2,
      axes: 1,
      events: 5,
      startCovariance: Float64Array.of(1e8, 0, 0, 1e8),
      startMean: new Float64Array(2),
      transition(_, transition) {
        transition.set([1, 1, 0, 1]);
      },
      measure: (k, observe) => observe(Float64Array.of(1, 0), 1, Float64Array.of(values[k])),
    });
    // Slope by hand: sum (k - 2) y / sum (k - 2)^2 = 19.9 / 10; the mean of y is 4.02.
    for (let k = 0; k < 5; k++) {
      expect(mean[2 * k + 1]).toBeCloseTo(1.99, 6);
      expect(mean[2 * k]).toBeCloseTo(4.02 + 1.99 * (k - 2), 6);
    }
  });

  it("gives every axis its own mean from one covariance", () => {
    const { mean } = smooth({
      states: 1,
      axes: 2,
      events: 2,
      startCovariance: Float64Array.of(1e9),
      startMean: new Float64Array(2),
      transition(_, transition) {
        transition[0] = 1;
      },
      measure: (k, observe) => observe(Float64Array.of(1), 1, Float64Array.of(k, 10 + k)),
    });
    expect(mean[0]).toBeCloseTo(0.5, 7);
    expect(mean[1]).toBeCloseTo(10.5, 7);
  });
});

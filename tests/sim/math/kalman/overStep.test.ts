import { describe, expect, it } from "vitest";
import { overStep } from "../../../../sim/math/kalman/overStep.ts";

describe("a linear stochastic differential equation over a step", () => {
  it.each([0.001, 0.3, 1, 20])("of first order over %f s is the closed form", (dt) => {
    // dx = -x/T dt + dw of density 2 s^2/T: f = exp(-dt/T), q = s^2 (1 - f^2); T = 4, s = 3.
    const { transition, noise } = overStep(1, Float64Array.of(-1 / 4), Float64Array.of((2 * 9) / 4), dt);
    const f = Math.exp(-dt / 4);
    expect(transition[0]).toBeCloseTo(f, 12);
    expect(noise[0] / (9 * (1 - f * f))).toBeCloseTo(1, 9);
  });

  it("of speed driven by white noise is the textbook's cubic", () => {
    // Q = q [t^3/3 t^2/2; t^2/2 t]
    const { transition, noise } = overStep(2, Float64Array.of(0, 1, 0, 0), Float64Array.of(0, 0, 0, 0.7), 2);
    [1, 2, 0, 1].forEach((value, i) => {
      expect(transition[i]).toBeCloseTo(value, 12);
    });
    [(0.7 * 8) / 3, 1.4, 1.4, 1.4].forEach((value, i) => {
      expect(noise[i]).toBeCloseTo(value, 12);
    });
  });
});

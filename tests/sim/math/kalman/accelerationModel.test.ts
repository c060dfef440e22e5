import { describe, expect, it } from "vitest";
import { accelerationModel } from "../../../../sim/math/kalman/accelerationModel.ts";

describe("the model of a wandering acceleration", () => {
  const model = (dt_s: number) => {
    const transition = new Float64Array(9);
    const noise = new Float64Array(9);
    accelerationModel(dt_s, 0.9, 5, 3, transition, noise);
    return { transition, noise };
  };

  it("over two seconds is the model over one second, twice", () => {
    const one = model(1);
    const two = model(2);
    const product = (a: Float64Array, b: Float64Array) =>
      Float64Array.from({ length: 9 }, (_, k) => {
        const [i, j] = [Math.floor(k / 3), k % 3];
        return a[3 * i] * b[j] + a[3 * i + 1] * b[3 + j] + a[3 * i + 2] * b[6 + j];
      });
    const transposed = Float64Array.from({ length: 9 }, (_, k) => one.transition[3 * (k % 3) + Math.floor(k / 3)]);
    const carried = product(product(one.transition, one.noise), transposed);
    const twice = product(one.transition, one.transition);
    for (let k = 0; k < 9; k++) {
      expect(twice[k]).toBeCloseTo(two.transition[k], 12);
      expect(carried[k] + one.noise[k]).toBeCloseTo(two.noise[k], 12);
    }
  });

  it("goes over into its series for short steps without a jump", () => {
    // At b = 0.02 the first neglected term of the series is about b of the kept one.
    const [below, above] = [model(0.0999), model(0.1001)];
    for (const k of [0, 1, 2, 4, 5, 8]) {
      expect(below.noise[k] / above.noise[k]).toBeGreaterThan(0.96);
      expect(below.noise[k] / above.noise[k]).toBeLessThan(1.03);
    }
  });
});

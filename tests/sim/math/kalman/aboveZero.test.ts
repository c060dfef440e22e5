import { describe, expect, it } from "vitest";
import { type AboveZero, aboveZero, upperTail } from "../../../../sim/math/kalman/aboveZero.ts";

describe("a normal distribution above zero", () => {
  it.each([
    // P(Z > x), from tables of the normal distribution.
    [0, 0.5],
    [1, 0.1586552539],
    [1.959963985, 0.025],
    [-3, 0.998650102],
    [5, 2.866515719e-7],
  ])("has the share above %f that tables give", (x, share) => {
    expect(upperTail(x) / share).toBeCloseTo(1, 6);
  });

  it.each([
    [1, 4],
    [-3, 1],
    [6, 1],
  ])("with mean %f and variance %f has the moments that a sum over fine steps gives", (mean, variance) => {
    const s = Math.sqrt(variance);
    let [share, first, second] = [0, 0, 0];
    const step = s / 5000;
    for (let x = step / 2; x < Math.max(0, mean) + 12 * s; x += step) {
      const p = (step * Math.exp(-0.5 * ((x - mean) / s) ** 2)) / (s * Math.sqrt(2 * Math.PI));
      share += p;
      first += p * x;
      second += p * x * x;
    }
    const found: AboveZero = { share: 0, mean: 0, variance: 0 };
    aboveZero(mean, variance, found);
    expect(found.share / share).toBeCloseTo(1, 6);
    expect(found.mean / (first / share)).toBeCloseTo(1, 5);
    expect(found.variance / (second / share - (first / share) ** 2)).toBeCloseTo(1, 4);
  });
});

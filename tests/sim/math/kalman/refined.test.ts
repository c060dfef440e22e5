import { describe, expect, it } from "vitest";
import { refined } from "../../../../sim/math/kalman/refined.ts";

// A hill whose top is known: the logarithms of a and b trade against each other, as those of noises do.
const bounds = { a: [0.01, 100], b: [0.01, 100] } as const;
const hill = (a0: number, b0: number) => (values: { a: number; b: number }) => {
  const [x, y] = [Math.log(values.a / a0), Math.log(values.b / b0)];
  return -(x * x + y * y + x * y);
};

describe("the likeliest values near a start", () => {
  it.each([
    [3, 0.2],
    [0.05, 40],
  ])("are found to within the last factor, a %d and b %d", (a0, b0) => {
    const { a, b } = refined({ a: 1, b: 1 }, bounds, hill(a0, b0), [3, 1.7, 1.3, 1.12]);
    // A step of log 1.12 = 0.11 either way is no better: neither logarithm is off by more than that.
    expect(Math.abs(Math.log(a / a0))).toBeLessThan(0.12);
    expect(Math.abs(Math.log(b / b0))).toBeLessThan(0.12);
  });

  it("stay within their bounds, and where they are where nothing is likelier", () => {
    expect(refined({ a: 1, b: 1 }, bounds, ({ a }) => a, [3, 1.7, 1.3])).toEqual({ a: 100, b: 1 });
    expect(refined({ a: 1, b: 1 }, bounds, () => 0, [3])).toEqual({ a: 1, b: 1 });
  });
});

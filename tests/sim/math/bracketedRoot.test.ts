import fc from "fast-check";
import { expect, it } from "vitest";
import { narrowBracket } from "../../../sim/math/bracketedRoot.ts";

type F = (x: number) => number;

/** The bracket around f's sign change between two places, and how often f was asked. */
function narrowed(f: F, low: number, high: number, tolerance: number) {
  const bracket = { low, high };
  let asked = 0;
  const counting = (g: F, x: number) => {
    asked++;
    return g(x);
  };
  narrowBracket(counting, f, bracket, f(low), f(high), tolerance);
  return { ...bracket, asked };
}

it("keeps a sign change inside, not above zero at low and above zero at high, to the tolerance", () => {
  const shapes: readonly F[] = [
    (x) => x - 1,
    (x) => x ** 9 - 1,
    (x) => Math.exp(20 * (x - 1)) - 1,
    (x) => Math.atan(50 * (x - 1)),
    (x) => (x < 1 ? -1e-9 : 1e9),
  ];
  for (const f of shapes) {
    const { low, high } = narrowed(f, -3, 4, 1e-10);
    expect(f(low)).toBeLessThanOrEqual(0);
    expect(f(high)).toBeGreaterThan(0);
    expect(Math.abs(high - low)).toBeLessThanOrEqual(1e-10);
    expect(Math.abs(low - 1)).toBeLessThanOrEqual(1.1e-10);
  }
});

it("works with low above high, as where braking torque is searched from nothing downward", () => {
  const { low, high } = narrowed((x) => -x - 2, 0, -10, 1e-12);
  expect(-low - 2).toBeLessThanOrEqual(0);
  expect(high).toBeLessThan(low);
  expect(low).toBeCloseTo(-2, 11);
});

it("narrows to the jump of a function that jumps", () => {
  const { low, high } = narrowed((x) => (x < 0.3 ? -5 : 7), 0, 1, 1e-12);
  expect(low).toBeLessThan(0.3);
  expect(high).toBeGreaterThanOrEqual(0.3);
  expect(high - low).toBeLessThanOrEqual(1e-12);
});

it("ends on any rising function, in far fewer steps than halving where it is smooth", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 7 }), (place, power) => {
      const root = place / 1000;
      const { low, asked } = narrowed((x) => Math.sign(x - root) * Math.abs(x - root) ** power, 0, 1, 1e-12);
      expect(Math.abs(low - root)).toBeLessThanOrEqual(1e-12);
      expect(asked).toBeLessThanOrEqual(power === 1 ? 6 : 120);
    }),
  );
});

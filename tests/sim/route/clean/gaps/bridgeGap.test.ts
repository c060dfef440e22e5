import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crossGap, crossingSpeed_mps } from "../../../../../sim/route/clean/gaps/bridgeGap.ts";

/** Distance under the speeds of a crossing, by fine steps. */
const driven_m = (from_mps: number, to_mps: number, gap_s: number, distance_m: number) => {
  const crossing = crossGap(from_mps, to_mps, gap_s, distance_m);
  const steps = 20_000;
  let sum_m = 0;
  for (let k = 0; k < steps; k++) {
    sum_m += (crossingSpeed_mps(crossing, from_mps, to_mps, gap_s, ((k + 0.5) * gap_s) / steps) * gap_s) / steps;
  }
  return { crossing, sum_m };
};

describe("crossing a gap", () => {
  it.each([
    [20, 20, 30, 600],
    [20, 10, 31, 390],
    [15, 12, 60, 200],
    [0, 0, 40, 300],
    [10, 10, 60, 120],
  ])("from %f to %f m/s in %f s covers %f m", (from_mps, to_mps, gap_s, distance_m) => {
    // Halving stops at 70 / 2^60 m/s; the fine steps are good to about 1e-4 of the distance.
    expect(driven_m(from_mps, to_mps, gap_s, distance_m).sum_m / distance_m).toBeCloseTo(1, 3);
  });

  it("holds a steady speed where that is the plainest", () => {
    expect(crossGap(20, 20, 30, 600).steady_mps).toBeCloseTo(20, 9);
  });

  it("puts a stop in where the distance is short", () => {
    expect(crossGap(10, 10, 60, 80).steady_mps).toBeCloseTo(0, 6);
  });

  it("has the end's speed at the end and a rounding beyond it, where all of the gap is one change of speed", () => {
    const [to_mps, gap_s] = [19.89094490388194, 3.9781889807763875];
    const crossing = crossGap(0, to_mps, gap_s, 0);
    expect(crossing.down_s).toBe(0);
    expect(crossingSpeed_mps(crossing, 0, to_mps, gap_s, (50 * gap_s) / 50)).toBe(to_mps);
    expect(crossingSpeed_mps(crossing, 0, to_mps, gap_s, gap_s * (1 + 1e-15))).toBe(to_mps);
  });

  it("never goes below zero, and says what it covers, whatever it is asked", () => {
    const speed = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(
        speed,
        speed,
        fc.double({ min: 2, max: 600, noNaN: true }),
        fc.double({ min: 0, max: 30_000, noNaN: true }),
        (a, b, gap_s, far_m) => {
          const { crossing, sum_m } = driven_m(a, b, gap_s, far_m);
          expect(crossing.steady_mps).toBeGreaterThanOrEqual(0);
          for (let k = 0; k <= 50; k++) {
            expect(crossingSpeed_mps(crossing, a, b, gap_s, (k * gap_s) / 50)).toBeGreaterThanOrEqual(-1e-9);
          }
          expect(Math.abs(sum_m - crossing.distance_m)).toBeLessThan(1e-3 * crossing.distance_m + 0.05);
        },
      ),
      { numRuns: 60 },
    );
  });
});

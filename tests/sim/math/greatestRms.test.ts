import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatestRms } from "../../../sim/math/greatestRms.ts";

const evenly = (count: number, step_s = 1) => Float64Array.from({ length: count + 1 }, (_, i) => i * step_s);

describe("the greatest root mean square over a window", () => {
  it("of a constant is that constant, for any window", () => {
    const time_s = evenly(100);
    const value = new Float64Array(101).fill(-80);
    for (const window_s of [0, 0.3, 2, 10, 99.5, 100, 250, 600])
      expect(greatestRms(time_s, value, window_s)).toBeCloseTo(80, 10);
  });

  it("of one pulse is its height within it and falls as the root of their lengths beyond it", () => {
    // 300 A from 40 s to 50 s, nothing else: √(300² · 10 / w).
    const time_s = evenly(100);
    const value = Float64Array.from({ length: 101 }, (_, i) => (i > 40 && i <= 50 ? 300 : 0));
    expect(greatestRms(time_s, value, 0)).toBe(300);
    expect(greatestRms(time_s, value, 2)).toBeCloseTo(300, 10);
    expect(greatestRms(time_s, value, 10)).toBeCloseTo(300, 10);
    expect(greatestRms(time_s, value, 40)).toBeCloseTo(150, 10);
    expect(greatestRms(time_s, value, 90)).toBeCloseTo(100, 10);
    // Longer than the road, which is then driven again and again: 6 passes of 10 s in 600 s.
    expect(greatestRms(time_s, value, 600)).toBeCloseTo(300 * Math.sqrt(0.1), 10);
    // 110 s from the pulse's beginning hold two whole pulses: √(300² · 20 / 110).
    expect(greatestRms(time_s, value, 110)).toBeCloseTo(300 * Math.sqrt(20 / 110), 10);
  });

  it("of a sine over whole periods is its height over √2", () => {
    const time_s = evenly(20_000, 0.01); // 200 s, period 20 s
    const value = Float64Array.from(time_s, (t) => 100 * Math.sin((2 * Math.PI * (t - 0.005)) / 20));
    expect(greatestRms(time_s, value, 60)).toBeCloseTo(100 / Math.SQRT2, 4);
    // Over half of a quarter either side of the crest: mean of sin² is 1/2 + 1/π.
    expect(greatestRms(time_s, value, 5)).toBeCloseTo(100 * Math.sqrt(0.5 + 1 / Math.PI), 2);
  });

  it("does not hang on how a signal is sampled, nor on when its clock begins", () => {
    const uneven_s = [0, 1, 1.5, 7, 7.25, 30];
    const value = [0, 10, -250, 40, 400, 5];
    const fine_s = evenly(120, 0.25);
    const fine = Float64Array.from(fine_s, (t) => value[uneven_s.findIndex((end_s) => t <= end_s)]);
    for (const window_s of [0, 0.5, 2, 10, 29, 45]) {
      const expected = greatestRms(fine_s, fine, window_s);
      expect(greatestRms(uneven_s, value, window_s)).toBeCloseTo(expected, 9);
      const later_s = uneven_s.map((t) => t + 1000);
      expect(greatestRms(later_s, value, window_s)).toBeCloseTo(expected, 9);
    }
  });

  it("is never below what trying every second finds, nor above the peak", () => {
    const values = fc.array(fc.integer({ min: -400, max: 400 }), { minLength: 12, maxLength: 60 });
    fc.assert(
      fc.property(values, fc.integer({ min: 1, max: 11 }), (list, window) => {
        const time_s = evenly(list.length);
        const value = [0, ...list];
        const found = greatestRms(time_s, value, window);
        const tried = list.slice(0, list.length - window + 1).map((_, from) => {
          const squares = list.slice(from, from + window).map((x) => x * x);
          return Math.sqrt(squares.reduce((a, b) => a + b, 0) / window);
        });
        expect(found).toBeCloseTo(Math.max(...tried), 8);
        expect(found).toBeLessThanOrEqual(greatestRms(time_s, value, 0) + 1e-9);
      }),
    );
  });

  it("of nothing driven is none", () => {
    expect(greatestRms([], [], 10)).toBe(0);
    expect(greatestRms([0], [0], 0)).toBe(0);
  });
});

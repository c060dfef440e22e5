import { describe, expect, it } from "vitest";
import { heightModel } from "../../../../../sim/route/clean/heights/heightModel.ts";

const noise = { slope_ratio: 0.03, slopeLasts_m: 120, white_m: 1, correlated_m: 3, correlation_s: 60 };
const step = (dt_s: number, by_m: number, isFiltered = false) => {
  const size = isFiltered ? 25 : 16;
  const transition = new Float64Array(size);
  const spread = new Float64Array(size);
  const elevation_m = Float64Array.of(100, 101);
  const model = heightModel(
    Float64Array.of(0, dt_s),
    Float64Array.of(0, by_m),
    elevation_m,
    { ...noise, isFiltered },
    0,
    2,
  );
  model.transition(1, transition, spread);
  return { transition, spread };
};

describe("the model of heights along a road", () => {
  it.each([1, 30, 600])("keeps the receiver's correlated noise at its variance over %d s", (dt_s) => {
    // A first-order process that is stationary: f² w² + q = w², with f = exp(-dt / 60 s).
    const { transition, spread } = step(dt_s, 10);
    expect(transition[15]).toBeCloseTo(Math.exp(-dt_s / 60), 12);
    expect(transition[15] ** 2 * 9 + spread[15]).toBeCloseTo(9, 12);
  });

  // Steps are kept in 4096ths of the length over which a slope lasts; these are such.
  it.each([7.5, 90, 900])(
    "keeps slope and its change at their variances over %d m, and carries the height by the slope",
    (by_m) => {
      // Matern's process of order 3/2: F = [1 + u, x; -x/L^2, 1 - u] exp(-u) with u = x/L; var(s) = s0^2, var(s') = s0^2 / L^2.
      const { transition, spread } = step(1, by_m);
      const [s, change] = [0.03 ** 2, (0.03 / 120) ** 2];
      const u = by_m / 120;
      expect(transition[5]).toBeCloseTo((1 + u) * Math.exp(-u), 9);
      expect(transition[6]).toBeCloseTo(by_m * Math.exp(-u), 6);
      expect(transition[5] ** 2 * s + transition[6] ** 2 * change + spread[5]).toBeCloseTo(s, 9);
      // The height gains the integral of the slope's course: L (2 - (2 + u) exp(-u)).
      expect(transition[1]).toBeCloseTo(120 * (2 - (2 + u) * Math.exp(-u)), 6);
    },
  );

  it.each([1.875, 15, 60])("keeps filtered noise and its rate at their variances over %d s", (dt_s) => {
    // The same process by time: u = t/T, var(n) = w^2, var(n') = w^2 / T^2.
    const { transition, spread } = step(dt_s, 0, true);
    const u = dt_s / 60;
    expect(transition[18]).toBeCloseTo((1 + u) * Math.exp(-u), 9);
    expect(transition[18] ** 2 * 9 + transition[19] ** 2 * (3 / 60) ** 2 + spread[18]).toBeCloseTo(9, 9);
    expect(transition[24]).toBeCloseTo((1 - u) * Math.exp(-u), 9);
  });

  it("leaves the height where it is while the car stands", () => {
    const { transition, spread } = step(20, 0);
    expect([...transition.subarray(0, 3), ...spread.subarray(0, 3)]).toEqual([1, 0, 0, 0, 0, 0]);
  });
});

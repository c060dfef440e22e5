import { describe, expect, it } from "vitest";
import { heightModel } from "../../../../../sim/route/clean/heights/heightModel.ts";

const noise = { slope_ratio: 0.03, white_m: 1, wandering_m: 3 };
const step = (dt_s: number, by_m: number) => {
  const transition = new Float64Array(9);
  const spread = new Float64Array(9);
  const elevation_m = Float64Array.of(100, 101);
  const model = heightModel(Float64Array.of(0, dt_s), Float64Array.of(0, by_m), elevation_m, noise, 0, 2);
  model.transition(1, transition, spread);
  return { transition, spread };
};

describe("the model of heights along a road", () => {
  it.each([1, 30, 600])("keeps the receiver's correlated noise at its variance over %d s", (dt_s) => {
    // A first-order process that is stationary: f² w² + q = w², with f = exp(-dt / 60 s).
    const { transition, spread } = step(dt_s, 10);
    expect(transition[8]).toBeCloseTo(Math.exp(-dt_s / 60), 12);
    expect(transition[8] ** 2 * 9 + spread[8]).toBeCloseTo(9, 12);
  });

  it.each([5, 100, 900])("keeps the slope at its variance over %d m, and carries the height by it", (by_m) => {
    // The same with 300 m of road in place of a minute: f = exp(-x / 300 m), height by 300 m times 1 - f.
    const { transition, spread } = step(1, by_m);
    const f = Math.exp(-by_m / 300);
    expect(transition[4] ** 2 * 0.0009 + spread[4]).toBeCloseTo(0.0009, 12);
    // below 6 m a series stands in for the closed form, within 1 %
    expect(transition[1] / (300 * (1 - f))).toBeGreaterThan(0.99);
    expect(transition[1] / (300 * (1 - f))).toBeLessThan(1.01);
  });

  it("leaves the height where it is while the car stands", () => {
    const { transition, spread } = step(20, 0);
    expect([...transition.subarray(0, 2), ...spread.subarray(0, 2)]).toEqual([1, 0, 0, 0]);
  });
});

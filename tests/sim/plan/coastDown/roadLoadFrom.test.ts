import { expect, it } from "vitest";
import { roadLoadFrom } from "../../../../sim/plan/coastDown/roadLoadFrom.ts";
import type { CoastBand, CoastDay } from "../../../../sim/vehicle/coastDown/evaluateCoastDown.ts";

/** 1000 kg without rotating parts, on a reference day. */
const day: CoastDay = {
  mass_kg: 1000,
  rotating_ratio: 1,
  air_kgpm3: 1.189,
  air_K: 293.15,
  wind_mps: 0,
  gravity_mps2: 9.81,
  stopwatch_s: 0.1,
};
const band = (high_mps: number, low_mps: number, time_s: number): CoastBand => ({
  high_mps,
  low_mps,
  there_s: [time_s],
  back_s: [],
});
/** Time in a band of 200 N + 0.5 N/(m/s)²: m / √(f0 f2) (atan(v₁ √(f2/f0)) − atan(v₂ √(f2/f0))). */
const exact_s = (high_mps: number, low_mps: number) =>
  (1000 / Math.sqrt(200 * 0.5)) * (Math.atan(high_mps / 20) - Math.atan(low_mps / 20));

it("finds the law whose times it was given", () => {
  const bands = [
    [30, 25],
    [20, 15],
    [10, 5],
  ].map(([high_mps, low_mps]) => band(high_mps, low_mps, exact_s(high_mps, low_mps)));
  const { f0_N, f2_Npmps2 } = roadLoadFrom(bands, day, 2, "bands");
  expect(f0_N.value).toBeCloseTo(200, 3);
  expect(f2_Npmps2.value).toBeCloseTo(0.5, 6);
});

it("refuses fewer bands than the law has terms", () => {
  expect(() => roadLoadFrom([band(30, 25, 10)], day, 2, "bands")).toThrow(
    "found 1 band, at least 2 are wanted, one fast and one slow, for a law of 2 terms",
  );
});

it("refuses times by which air would push the car", () => {
  // As long fast as slow would be no drag at all; longer is less than none.
  expect(() => roadLoadFrom([band(30, 25, 30), band(10, 5, 10)], day, 2, "bands")).toThrow(
    "found times that no rolling car makes",
  );
});

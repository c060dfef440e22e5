import { expect, it } from "vitest";
import { fitDriving, spreadOf } from "../../../../../sim/route/clean/draws/fitDriving.ts";
import { drawsOf } from "../../../../support/draws.ts";

const noise = { correlated_m: 1, correlation_s: 20, white_m: 0.3, speed_mps: 0.1 };

/** Ten minutes at some 12 m/s whose acceleration falls back to nought in 2 s, of such a spread. */
function fitted(spread_mps2: number, showsDriving = true) {
  const { normal } = drawsOf(11);
  const keep = Math.exp(-1 / 2);
  let acceleration_mps2 = 0;
  let now_mps = 12;
  const time_s = Float64Array.from({ length: 600 }, (_, i) => i);
  const speed_mps = time_s.map(() => {
    acceleration_mps2 = keep * acceleration_mps2 + spread_mps2 * Math.sqrt(1 - keep * keep) * normal();
    now_mps += acceleration_mps2 + 0.1 * (12 - now_mps);
    return Math.max(2, now_mps);
  });
  const road = {
    time_s,
    at_m: new Float64Array(600).fill(Number.NaN),
    speed_mps,
    offset_m2: new Float64Array(600),
    isParked: new Uint8Array(600),
  };
  return fitDriving(road, speed_mps, noise, {
    hasSpeeds: true,
    showsDriving,
    showsPositionNoise: true,
    bands_mps2: undefined,
  }).factor_ratio;
}

it("tells a calm driver from a hard one", () => {
  const [calm, hard] = [fitted(0.25), fitted(1.5)];
  expect(calm).toBeLessThan(0.8);
  expect(hard).toBeGreaterThan(1.3);
});

it("takes the cycles' driver where the log cannot show its own", () => {
  expect(fitted(0.25, false)).toBe(1);
});

it("spreads accelerations as the cycles do at the speed, times a factor, whichever way the car goes", () => {
  // 1.01 m/s² in the middle of the band at 6 m/s.
  expect([...spreadOf(Float64Array.of(6, -6), 2)]).toEqual([2.02, 2.02]);
});

import { describe, expect, it } from "vitest";
import { fitDriving } from "../../../../../sim/route/clean/draws/fitDriving.ts";
import { cycleSpeeds_mps } from "../../../../support/cycleSpeeds.ts";
import { drawsOf } from "../../../../support/draws.ts";

const EVERY_s = 5;
const SPEED_NOISE_mps = 0.15;
const speed_mps = Float64Array.from(cycleSpeeds_mps("udds"));
const time_s = speed_mps.map((_, i) => i);
const none = speed_mps.map(() => Number.NaN);

/** A fix every five seconds: a way with noise of the size given that falls back to nought over 20 s, and a recorded speed. */
function known(correlated_m: number, seed: number) {
  const draw = drawsOf(seed);
  const keep = Math.exp(-1 / 20);
  const at_m = none.slice();
  const recorded_mps = none.slice();
  let [way_m, off_m] = [0, correlated_m * draw.normal()];
  for (let i = 0; i < time_s.length; i++) {
    if (i > 0) way_m += 0.5 * (speed_mps[i] + speed_mps[i - 1]);
    off_m = keep * off_m + correlated_m * Math.sqrt(1 - keep * keep) * draw.normal();
    if (i % EVERY_s !== 0) continue;
    at_m[i] = way_m + off_m + 0.5 * draw.normal();
    recorded_mps[i] = Math.max(0, speed_mps[i] + SPEED_NOISE_mps * draw.normal());
  }
  return {
    time_s,
    at_m,
    speed_mps: recorded_mps,
    offset_m2: new Float64Array(time_s.length),
    isParked: new Uint8Array(time_s.length),
  };
}

describe("noise fitted to a log of a fix every five seconds", () => {
  it.each([2, 5, 10])("is that of its positions, %d m, and its recorded speeds stay good", (correlated_m) => {
    const assumed = { correlated_m: 5, correlation_s: 20, white_m: 0.5, speed_mps: SPEED_NOISE_mps };
    const { noise } = fitDriving(known(correlated_m, 3), speed_mps, assumed, {
      hasSpeeds: true,
      showsDriving: true,
      showsPositionNoise: false,
      bands_mps2: undefined,
    });
    // Values tried are a factor of 1.5 to 2 apart: the nearest or its neighbour.
    expect(Math.abs(Math.log(noise.correlated_m / correlated_m))).toBeLessThan(Math.log(2));
    expect(noise.speed_mps).toBeLessThan(0.4);
  });

  it("is left alone where the positions have shown it themselves", () => {
    const assumed = { correlated_m: 5, correlation_s: 20, white_m: 0.5, speed_mps: SPEED_NOISE_mps };
    const setting = { hasSpeeds: true, showsDriving: true, showsPositionNoise: true, bands_mps2: undefined };
    expect(fitDriving(known(10, 3), speed_mps, assumed, setting).noise.correlated_m).toBe(5);
  });
});

import { randomNormal } from "d3-random";
import { describe, expect, it } from "vitest";
import { type DriveErrors, type EnergyErrors, EVER, factorOf } from "../../../../sim/plan/measured/energyErrors.ts";
import { likelyErrors } from "../../../../sim/plan/measured/likelyErrors.ts";
import { seeded } from "../../../logs/logMaker.ts";

// Differences drawn from errors that are known: 120 segments of 20 s, 1400 kg, from 2 to 30 m/s.
const n = 120;
const speeds_mps = Float64Array.from({ length: n + 1 }, (_, s) => 16 + 14 * Math.sin(s));
const restSquared = new Float64Array(n * n);
for (let s = 0; s < n; s++) restSquared[s * n + s] = 4000 ** 2;
const usual: DriveErrors = { speed_mps: 0.1, elevation_m: 1.5, lasts_s: 35, lasts_m: EVER, model_frac: 0.03 };
const errors: EnergyErrors = {
  count: n,
  restSquared,
  fromSpeed_Ns: Float64Array.from({ length: n }, (_, s) => 1400 * speeds_mps[s]),
  toSpeed_Ns: Float64Array.from({ length: n }, (_, s) => 1400 * speeds_mps[s + 1]),
  isMet: Uint8Array.from({ length: n }, (_, s) => (s > 0 ? 1 : 0)),
  from_s: Float64Array.from({ length: n }, (_, s) => 20 * s),
  to_s: Float64Array.from({ length: n }, (_, s) => 20 * (s + 1)),
  from_m: Float64Array.from({ length: n }, (_, s) => 300 * s),
  to_m: Float64Array.from({ length: n }, (_, s) => 300 * (s + 1)),
  throughput_J: new Float64Array(n).fill(100_000),
  metre_J: 1400 * 9.81,
  usual,
};

/** What is left of differences, drawn: L z. */
function drawn(size: DriveErrors, seed: number, scale = 1): Float64Array {
  const lower = factorOf(errors, size);
  const draw = randomNormal.source(seeded(seed))(0, 1);
  const white = Float64Array.from({ length: n }, draw);
  return white.map((_, i) => {
    let sum = 0;
    for (let k = 0; k <= i; k++) sum += lower[i * n + k] * white[k];
    return scale * sum;
  });
}
const middle = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1];
const found = (size: DriveErrors, scale = 1) =>
  Array.from({ length: 15 }, (_, seed) => likelyErrors(errors, drawn(size, seed + 1, scale), []));

describe("errors found from what is left of differences", () => {
  it.each([
    ["a barometer", 0.4],
    ["a good receiver", 1.5],
    ["a telephone", 6],
  ])("have the heights of %s", (_, elevation_m) => {
    const heights = found({ ...usual, elevation_m }).map(({ size }) => size.elevation_m);
    // Values are tried a factor of two apart, so that one is off by 1.4 either way; 120 differences tell a size to about a tenth.
    expect(middle(heights) / elevation_m).toBeGreaterThan(0.6);
    expect(middle(heights) / elevation_m).toBeLessThan(1.7);
  });

  it("have the scale of all else, whatever the heights", () => {
    const scales = found(usual, 2).map(({ scale }) => scale);
    // Twice what was assumed of samples and clocks, and all else in step with it.
    expect(middle(scales)).toBeGreaterThan(1.4);
    expect(middle(scales)).toBeLessThan(2.8);
  });

  it("make differences white: their squares add up to how many there are, less the values fitted", () => {
    const left_J = drawn(usual, 9);
    const { lower } = likelyErrors(errors, left_J, []);
    let sum = 0;
    const white = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      let rest = left_J[i];
      for (let k = 0; k < i; k++) rest -= lower[i * n + k] * white[k];
      white[i] = rest / lower[i * n + i];
      sum += white[i] ** 2;
    }
    expect(sum / n).toBeCloseTo(1, 9);
  });

  it("leave out of account what the fitted values could still take up", () => {
    const left_J = drawn(usual, 9);
    const steady_J = Float64Array.from({ length: n }, () => 20_000);
    const shifted_J = left_J.map((each, s) => each + 3 * steady_J[s]);
    const [as, moved] = [left_J, shifted_J].map((each) => likelyErrors(errors, each, [steady_J]));
    expect(moved.scale / as.scale).toBeCloseTo(1, 6);
    expect(moved.size.elevation_m / as.size.elevation_m).toBeCloseTo(1, 6);
  });

  it("are as assumed, scaled, where samples are too far apart for motion to be told", () => {
    const { size, scale } = likelyErrors({ ...errors, metre_J: 0 }, drawn(errors.usual, 3, 2), []);
    expect(size.elevation_m / scale).toBeCloseTo(1.5, 9);
  });

  it("are never next to nothing, however well a made log fits", () => {
    expect(likelyErrors(errors, new Float64Array(n), []).scale).toBe(0.1);
  });
});

import { describe, expect, it } from "vitest";
import { fitHeightNoise } from "../../../../../sim/route/clean/heights/fitHeightNoise.ts";
import { drawsOf } from "../../../../support/draws.ts";

const SECONDS = 1800;
const time_s = Float64Array.from({ length: SECONDS }, (_, i) => i);
/** A drive at 12 m/s that stands for a minute in every six. */
const distance_m = new Float64Array(SECONDS);
for (let i = 1; i < SECONDS; i++) distance_m[i] = distance_m[i - 1] + (i % 360 < 60 ? 0 : 12);
/** Waves of 1,200 m whose slopes have a root mean square of 0.03. */
const slope_ratio = 0.03;
const road_m = distance_m.map(
  (at_m) => ((slope_ratio * Math.SQRT2 * 1200) / (2 * Math.PI)) * Math.sin((2 * Math.PI * at_m) / 1200),
);

/** Noise that falls back to nought over 60 s, of 4 m; new in every second, or taken twice through it as a receiver's filter does. */
function noise_m(isFiltered: boolean, seed: number): Float64Array {
  const draw = drawsOf(seed);
  const lasts_s = isFiltered ? 20 : 60;
  const keep = Math.exp(-1 / lasts_s);
  let [first, second] = [0, 0];
  const result = new Float64Array(SECONDS);
  for (let i = -300; i < SECONDS; i++) {
    first = keep * first + Math.sqrt(1 - keep * keep) * draw.normal();
    // Twice through the same filter leaves half the variance (sum of ((k + 1) keep^k)^2, for keep near 1).
    second = keep * second + (1 - keep) * first;
    if (i >= 0) result[i] = 4 * (isFiltered ? Math.SQRT2 * second : first);
  }
  return result;
}

describe("noise found in a log's heights", () => {
  it.each([false, true])("is told to be the receiver's own filtering or not: %s", (isFiltered) => {
    for (const seed of [1, 2, 3]) {
      const logged = noise_m(isFiltered, seed);
      const draw = drawsOf(seed + 50);
      const found = fitHeightNoise(
        time_s,
        distance_m,
        road_m.map((height, i) => height + logged[i] + 0.2 * draw.normal()),
      );
      expect(found.isFiltered).toBe(isFiltered);
      // 18 km have some 100 pieces over which a slope lasts: its size is known to 1 / sqrt(2 * 100), 7 %, beside noise. Four times that.
      expect(Math.abs(Math.log(found.slope_ratio / slope_ratio))).toBeLessThan(0.28);
      // What first-order noise does in a second, s sqrt(2 / T): of 1,800 seconds it is known to 1 / sqrt(3600), 2 %, but for the white noise.
      if (!isFiltered) {
        const change_m = found.correlated_m * Math.sqrt(2 / found.correlation_s);
        expect(Math.abs(Math.log(change_m / (4 * Math.sqrt(2 / 60))))).toBeLessThan(0.15);
      }
    }
  });

  it("leaves a level road level", () => {
    const found = fitHeightNoise(time_s, distance_m, noise_m(false, 7));
    expect(found.slope_ratio).toBeLessThan(0.005);
  });
});

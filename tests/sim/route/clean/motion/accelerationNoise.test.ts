import { expect, it } from "vitest";
import { accelerationNoise_mps2 } from "../../../../../sim/route/clean/motion/accelerationNoise.ts";

const time_s = Float64Array.from({ length: 41 }, (_, i) => i);

it("of an even acceleration is the root of the calmest squared and 1.2 times it squared, everywhere", () => {
  // By hand for s = 1 and a = 0.5: sqrt(0.4^2 + 1.44 * 0.25) = sqrt(0.52). Rounding of sums of forty squares only.
  const found = accelerationNoise_mps2(time_s, () => 0.5, 1, 3);
  expect(found).toHaveLength(41);
  expect(found.every((each_mps2) => Math.abs(each_mps2 - Math.sqrt(0.52)) < 1e-9)).toBe(true);
});

it("of a single push reaches three seconds to either side and no further", () => {
  const found = accelerationNoise_mps2(time_s, (k) => (k === 20 ? 2 : 0), 1, 3);
  // Seven moments lie within reach of each inside: sqrt(0.16 + 1.44 * 4 / 7).
  for (const k of [17, 20, 23]) expect(found[k]).toBeCloseTo(Math.sqrt(0.16 + (1.44 * 4) / 7), 12);
  for (const k of [16, 24, 0]) expect(found[k]).toBeCloseTo(0.4, 12);
});

import { expect, it } from "vitest";
import { fitSpeedNoise } from "../../../../../sim/route/clean/motion/fitSpeedNoise.ts";
import { drawsOf } from "../../../../support/draws.ts";

/** Ten minutes that speed up and down by at most 0.7 m/s², with such a noise. */
function found(noise_mps: number) {
  const { normal } = drawsOf(7);
  const time_s = Float64Array.from({ length: 600 }, (_, i) => i);
  return fitSpeedNoise(
    time_s,
    time_s.map((at_s) => 15 + 7 * Math.sin(at_s / 10) + noise_mps * normal()),
  );
}

it("tells a quiet receiver from a noisy one", () => {
  // Of those tried, 0.05, 0.1, 0.15, 0.25, 0.4 and 0.7 m/s: the one of the noise, or one beside it.
  expect(found(0.1).noise_mps).toBeLessThanOrEqual(0.15);
  expect(found(0.4).noise_mps).toBeGreaterThanOrEqual(0.25);
});

import { randomNormal } from "d3-random";
import { describe, expect, it } from "vitest";
import { bestLag, correlationAt } from "../../../sim/math/bestLag.ts";
import { seeded } from "../../logs/logMaker.ts";

/** A sum of two sines with no common period: it goes together with itself at one lag only. */
const wave = (time_s: number) => Math.sin(time_s / 7) + Math.sin(time_s / 11.3);
const series = {
  time_s: Float64Array.from({ length: 900 }, (_, i) => i),
  values: Float64Array.from({ length: 900 }, (_, i) => wave(i)),
};
const sampled = (step_s: number, late_s: number, sign = 1) => {
  const time_s = Float64Array.from({ length: Math.floor(600 / step_s) }, (_, k) => 100 + k * step_s);
  return { time_s, values: time_s.map((at_s) => 5 + 3 * sign * wave(at_s - late_s)) };
};

describe("the lag at which samples follow a series", () => {
  it.each([
    ["every second", 1, 1],
    ["every 17 s", 17, 1],
    ["turned round", 1, -1],
  ])("is found to a tenth of a second for samples %s", (_, step_s, sign) => {
    const found = bestLag(series, sampled(step_s, 7.3, sign), { from_s: -60, to_s: 60, step_s: 1, least: 20 });
    expect(Math.abs(found.lag_s + 7.3)).toBeLessThan(0.1);
    // Straight lines between seconds of the series leave that much.
    expect(found.correlation * sign).toBeGreaterThan(0.998);
  });

  it("is not drawn to half-way between the points of a noisy series, where straight lines smooth its noise", () => {
    const draw = randomNormal.source(seeded(3))(0, 0.5);
    const offs_s = Array.from({ length: 30 }, () => {
      const noisy = { ...series, values: series.values.map((each) => each + draw()) };
      return bestLag(noisy, sampled(1, 7.2), { from_s: -60, to_s: 60, step_s: 1, least: 20 }).lag_s + 7.2;
    });
    const mean_s = offs_s.reduce((sum, each) => sum + each, 0) / offs_s.length;
    // Noise of 0.5 in each of 600 points on slopes of 0.12 a second rms: 0.5 / (0.12 √600) = 0.17 s. Of the mean of 30, three deviations.
    expect(Math.abs(mean_s)).toBeLessThan((3 * 0.17) / Math.sqrt(30));
  });

  it("is none where the two never meet", () => {
    const far = sampled(1, 0);
    const found = bestLag(
      series,
      { ...far, time_s: far.time_s.map((at_s) => at_s + 1e6) },
      { from_s: -60, to_s: 60, step_s: 1, least: 20 },
    );
    expect(found.correlation).toBe(0);
  });
});

it("is Pearson's coefficient: -1 for a falling straight line against a rising one", () => {
  const line = { time_s: Float64Array.of(0, 1, 2, 3), values: Float64Array.of(0, 1, 2, 3) };
  const falling = { time_s: Float64Array.of(0, 1, 2, 3), values: Float64Array.of(9, 7, 5, 3) };
  expect(correlationAt(line, falling, 0, 2)).toBeCloseTo(-1, 12);
});

import { expect, it } from "vitest";
import { smooth } from "../../../../../sim/math/kalman/smooth.ts";
import { SPEED_STATES, speedModel } from "../../../../../sim/route/clean/motion/speedModel.ts";

const noise = { noise_mps: 0.15, acceleration_mps2: 1 };
const time_s = Float64Array.from({ length: 21 }, (_, i) => i);
const speeds = (speed_mps: Float64Array, known: Parameters<typeof speedModel>[5] = {}) => {
  const { mean } = smooth(speedModel(time_s, speed_mps, noise, 0, time_s.length, known));
  return Array.from(time_s, (_, k) => mean[SPEED_STATES * k]);
};

it("keeps a steady speed, and fills in what was not recorded", () => {
  const holes = new Float64Array(21).fill(12);
  holes.fill(Number.NaN, 8, 12);
  for (const speed_mps of speeds(holes)) expect(speed_mps).toBeCloseTo(12, 1);
});

it("stands where it is known to stand, whatever the receiver says", () => {
  const isStanding = new Uint8Array(21).fill(1);
  for (const speed_mps of speeds(new Float64Array(21).fill(0.5), { isStanding })) expect(speed_mps).toBeCloseTo(0, 2);
});

it("looks only at the moments that it is asked for", () => {
  expect(speedModel(time_s, time_s, noise, 5, 9)).toMatchObject({ events: 4, states: 2, axes: 1 });
});

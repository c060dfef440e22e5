import { expect, it } from "vitest";
import { type Grip, gripForce_N } from "../../../sim/vehicle/grip.ts";

// 1200 kg, 55 % on the front axle, centre of gravity 0.54 m high over a wheelbase of 2.4 m, on a wet road.
const rear: Grip = {
  grip_coeff: 0.5,
  drivenAxle: "rear",
  drivenShare_frac: 0.45,
  transfer_ratio: 0.54 / 2.4,
  mass_kg: 1200,
  gravity_mps2: 9.81,
};
const front: Grip = { ...rear, drivenAxle: "front", drivenShare_frac: 0.55 };
const WEIGHT_N = 1200 * 9.81;

it("is the friction of the driven axle's share of the weight at rest on the level", () => {
  expect(gripForce_N(rear, 0, 0, 1)).toBeCloseTo(0.5 * 0.45 * WEIGHT_N, 9);
  expect(gripForce_N(front, 0, 0, 1)).toBeCloseTo(0.5 * 0.55 * WEIGHT_N, 9);
});

// N_rear = W (a/L) + (h/L) m (dv/dt + g sin θ), by hand. [Gillespie1992, ch. 1]
it("grows at the rear and falls at the front by h/L of mass times acceleration", () => {
  const moved_N = (0.54 / 2.4) * 1200 * 2;
  expect(gripForce_N(rear, 2, 0, 1)).toBeCloseTo(0.5 * (0.45 * WEIGHT_N + moved_N), 9);
  expect(gripForce_N(front, 2, 0, 1)).toBeCloseTo(0.5 * (0.55 * WEIGHT_N - moved_N), 9);
  expect(gripForce_N(rear, -2, 0, 1)).toBeCloseTo(0.5 * (0.45 * WEIGHT_N - moved_N), 9);
});

it("on a hill carries the weight's cosine and moves its sine to the rear", () => {
  const theta = Math.atan(0.25);
  const expected_N = 0.5 * WEIGHT_N * (0.45 * Math.cos(theta) + (0.54 / 2.4) * Math.sin(theta));
  expect(gripForce_N(rear, 0, Math.sin(theta), Math.cos(theta))).toBeCloseTo(expected_N, 9);
});

it("counts all of the weight with both axles driven, however the car speeds up", () => {
  const both: Grip = { ...rear, drivenAxle: "both" };
  expect(gripForce_N(both, 0, 0, 1)).toBeCloseTo(0.5 * WEIGHT_N, 9);
  expect(gripForce_N(both, 3, 0, 1)).toBe(gripForce_N(both, 0, 0, 1));
});

it("is nothing, not negative, where the axle would lift", () => {
  expect(gripForce_N(front, 40, 0, 1)).toBe(0);
});

import { expect, it } from "vitest";
import { smoothPositions } from "../../../../../sim/route/clean/motion/smoothPositions.ts";
import { runSteps } from "../../../../../sim/route/log/steps.ts";

// Two minutes at rest; in the middle the receiver starts again and is 30 m further east from then on.
const n = 241;
const time_s = Float64Array.from({ length: n }, (_, i) => 0.5 * i);
const east_m = time_s.map((t) => (t < 60 ? 0 : 30));
const north_m = new Float64Array(n);
const isStanding = new Uint8Array(n);
const noise = { correlated_m: 3, white_m: 0.5, correlation_s: 20, acceleration_mps2: 0.9 };
const fastest_mps = (offset_m2: Float64Array) => {
  const { eastSpeed_mps } = runSteps(smoothPositions({ time_s, east_m, north_m, isStanding, offset_m2, noise }));
  return eastSpeed_mps.reduce((most, each) => Math.max(most, each), 0);
};

it("a step of the positions is no drive where their offset is known to have changed there", () => {
  const none = new Float64Array(n);
  const known = none.map((_, i) => (i === 120 ? 1600 : 0));
  // An offset fades with the noise's 20 s, so of one of 30 m the car is believed to drive off no more than 30 m / 20 s. Without
  // word of it the 30 m can only have been driven, in the few seconds that an acceleration lasts.
  expect(fastest_mps(known)).toBeLessThan(30 / 20);
  expect(fastest_mps(none)).toBeGreaterThan(30 / 10);
});

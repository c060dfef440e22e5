import fc from "fast-check";
import { expect, it } from "vitest";
import { type Gear, inputTorque_Nm, meshLoss_N, wheelForce_N } from "../../../sim/vehicle/gear.ts";

/** 20 radians of the motor a metre, 80 %. */
const gear: Gear = {
  name: "only",
  motor_radpm: 20,
  efficiency_frac: 0.8,
  drive_Nm: 100,
  overrun_Nm: 100,
  regen_Nm: 100,
  top_mps: 50,
};

it("divides by the efficiency when driving and multiplies on the overrun", () => {
  expect(inputTorque_Nm(gear, 1600)).toBe(100);
  expect(inputTorque_Nm(gear, -1600)).toBe(-64);
  expect(wheelForce_N(gear, 100)).toBe(1600);
  expect(wheelForce_N(gear, -64)).toBe(-1600);
});

it("loses what one side gives and the other does not get, either way", () => {
  expect(meshLoss_N(gear, 1600)).toBeCloseTo(400, 12);
  expect(meshLoss_N(gear, -1600)).toBeCloseTo(320, 12);
  fc.assert(
    fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (wheel_N) => {
      const input_N = inputTorque_Nm(gear, wheel_N) * gear.motor_radpm;
      expect(meshLoss_N(gear, wheel_N)).toBeCloseTo(input_N - wheel_N, 8);
      expect(wheelForce_N(gear, inputTorque_Nm(gear, wheel_N))).toBeCloseTo(wheel_N, 8);
    }),
  );
});

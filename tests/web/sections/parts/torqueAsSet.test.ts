import { expect, it } from "vitest";
import type { MotorSurface } from "../../../../sim/index.ts";
import { torqueAsSet } from "../../../../web/sections/parts/torqueAsSet.ts";

const point = (speed_rpm: number, torque_Nm: number) => ({ speed_rpm, torque_Nm });

it("is the envelope as far as the controller lets it through, braking left out", () => {
  const surface = {
    envelope: [point(0, 100), point(2000, 100), point(4000, 50), point(2000, -60)],
    limits: [
      { name: "controller", points: [point(0, 80), point(2000, 80)] },
      { name: "driveline in second", points: [point(0, 10)] },
    ],
  } as unknown as MotorSurface;
  const { motor, asSet } = torqueAsSet(surface);
  expect(motor.map(({ torque_Nm }) => torque_Nm)).toEqual([100, 100, 50]);
  expect(asSet.map(({ torque_Nm }) => torque_Nm)).toEqual([80, 80, 50]);
});

import { expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { startingCurve } from "../../../../web/forms/motor/engineForm.ts";
import { demoJob } from "../../../support/demoJob.ts";

const withEngine = (engine: Job["engine"]): Job => ({ ...demoJob(), engine });

it("starts with the ends, the best torque and the best power of the curve that is drawn through the ratings", () => {
  const { speed_rpm, torque_Nm } = startingCurve(demoJob());
  // The demo's engine: 115 Nm at 2500 rpm, 44 kW at 4700 rpm, which is 44,000 W / 492.2 rad/s = 89.4 Nm.
  expect(speed_rpm).toHaveLength(4);
  expect(speed_rpm.slice(1, 3)).toEqual([2500, 4700]);
  expect(torque_Nm[1]).toBeCloseTo(115, 1);
  expect(torque_Nm[2]).toBeCloseTo(89.4, 1);
  expect([...speed_rpm].sort((a, b) => a - b)).toEqual(speed_rpm);
});

it("starts around the best torque where nothing else of the engine is known", () => {
  // 0.4 and 1.8 times 2000 rpm, four fifths of 80 Nm at both.
  expect(startingCurve(withEngine({ ratedTorque_Nm: 80, torque_rpm: 2000 }))).toEqual({
    speed_rpm: [800, 2000, 3600],
    torque_Nm: [64, 80, 64],
  });
});

it("starts with an invented small engine where nothing is known at all", () => {
  expect(startingCurve(withEngine(undefined))).toEqual({ speed_rpm: [1000, 2500, 4500], torque_Nm: [80, 100, 80] });
});

import { expect, it } from "vitest";
import { motorDemand_Nm } from "../../../sim/step/motorDemand.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob } from "../../support/bareCar.ts";

/** A gear of 20 rad a metre and 90 %, 2 Nm of drag in the box, a rotor of 0.1 kg m². */
function contextAt(mean_mps: number, accel_mps2: number, wheel_N: number) {
  const job = bareJob({
    driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.9 }], noLoadDrag_Nm: 2 },
    motor: { rotorInertia_kgm2: 0.1 },
  });
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  Object.assign(context.interval, { mean_mps, accel_mps2, wheel_N });
  return context;
}

it("is the force through the gear, the box's drag and what speeds the rotor up", () => {
  const context = contextAt(10, 1, 1400);
  // 1400 / (20 x 0.9) + 2 + 0.1 x 20.
  expect(motorDemand_Nm(context)).toBeCloseTo(1400 / 18 + 4, 9);
  expect(context.interval.motor_radps).toBeCloseTo(200, 9);
  expect(context.interval.rotor_Nm).toBeCloseTo(2, 9);
});

it("has the driveline help to brake", () => {
  expect(motorDemand_Nm(contextAt(10, -1, -1400))).toBeCloseTo((-1400 * 0.9) / 20 + 2 - 2, 9);
});

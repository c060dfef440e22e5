import { expect, it } from "vitest";
import { gearFacts } from "../../../web/sheet/gearFacts.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const job = inventedJob();
const facts = (changes: object) => Object.fromEntries(gearFacts({ ...job, ...changes } as typeof job, "metric"));

it("has the speed at which the motor ends in the highest gear that is used", () => {
  // 8000 rpm, 290 mm, 1.4 x 4.2: 8000 x 2π/60 x 0.29 / 5.88 x 3.6 = 149 km/h, to two figures.
  expect(facts({})["Gear, speed"]).toBe("3; the motor turns no faster at 150 km/h");
});

it("has what the gearbox gets", () => {
  const limits = { ...job.driveline, limits: { gearboxInput_Nm: 140 } };
  expect(facts({})["Gearbox"]).toBeUndefined();
  expect(facts({ driveline: limits })["Gearbox"]).toBe("input limit 140 Nm; no torque cap is set");
  expect(facts({ driveline: limits, controller: { ...job.controller, torqueCap_Nm: 110 } })["Gearbox"]).toBe(
    "motor held to 110 Nm; input limit 140 Nm",
  );
});

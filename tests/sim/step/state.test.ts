import { expect, it } from "vitest";
import { prepare } from "../../../sim/step/prepare.ts";
import { createState } from "../../../sim/step/state.ts";
import { bareJob } from "../../support/bareCar.ts";

const job = bareJob({ environment: { temperature_degC: 5, pack_degC: 15 } });
const model = prepare(job, job.packs[0]);

it("is a car at rest at no height, as warm as its day, its pack as warm as that, with no peak used up", () => {
  expect(createState(model, 0.7)).toMatchObject({
    speed_mps: 0,
    distance_m: 0,
    elevation_m: 0,
    leg: 0,
    motor_K: 278.15,
    pack: { soc_frac: 0.7, temperature_K: 288.15, dischargeUse_A2s: 0, chargeUse_A2s: 0 },
    gear: { gear: 0, gearBefore: 0 },
  });
});

import { expect, it } from "vitest";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { rangeFrom_km } from "../../../../sim/plan/going/rangeFrom.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, evenSlope, steadyTrace } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";

const tyres = { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false };

it("is energy over drag in km: 4 kWh at 137.34 N are 104.8 km, less one start in each kilometre or two", () => {
  const job = bareJob({ ...flatPack(4), vehicle: { tyres } });
  const km = rangeFrom_km(prepare(job, job.packs[0]), steadyTrace(2, 1000, 1));
  expect(km / ((4 * 3600) / (0.01 * 1400 * 9.81))).toBeLessThanOrEqual(1);
  // A start takes 2.8 kJ, the 2 km after it 275 kJ.
  expect(km / ((4 * 3600) / (0.01 * 1400 * 9.81))).toBeGreaterThan(1 - 0.0103);
});

it("is nothing for a car that comes to a stand on its first way along the road", () => {
  const weak = bareJob({ ...flatPack(4), motor: { envelope: { kind: "peak", torque_Nm: 20, power_kW: 2000 } } });
  const hill = steadyTrace(10, 600, 1, evenSlope(0.2, 6000));
  const model = prepare(weak, weak.packs[0]);
  expect(rangeOn(model, hill).end).toBe("stuck");
  expect(rangeFrom_km(model, hill)).toBe(0);
});

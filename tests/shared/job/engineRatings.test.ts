import { expect, it } from "vitest";
import { engineRatings } from "../../../shared/job/engineRatings.ts";

it("are the greatest torque and the greatest power of a curve, each with its speed", () => {
  // 100 Nm at 2000 rpm are 20.9 kW, 80 Nm at 5000 rpm 41.9 kW, 60 Nm at 6000 rpm 37.7 kW.
  const found = engineRatings({ speed_rpm: [2000, 3500, 5000, 6000], torque_Nm: [100, 95, 80, 60] });
  expect(found).toMatchObject({ ratedTorque_Nm: 100, torque_rpm: 2000, power_rpm: 5000 });
  expect(found.ratedPower_kW).toBeCloseTo((80 * 5000 * 2 * Math.PI) / 60_000, 9);
});

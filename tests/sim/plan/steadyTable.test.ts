import { expect, it } from "vitest";
import { steadyTable } from "../../../sim/plan/steadyTable.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

const car: Changes = {
  vehicle: { roadLoad: { kind: "coastDown", f0_N: 150, f1_Npkmh: 0, f2_Npkmh2: 0.03, mass_kg: 1400 } },
  motor: { loss: { kind: "flat", efficiency_frac: 0.8 } },
  module: { capacity_Ah: 20 },
  accessories: { standing_W: 360 },
};

it("is force over efficiency plus the accessories over speed", () => {
  const [slow, fast] = steadyTable(bareJob(car), 0, [36, 72]);
  // F / 3.6 / 0.8 + W / (km/h), by hand
  expect(slow.battery_Whpkm).toBeCloseTo((150 + 0.03 * 36 * 36) / 3.6 / 0.8 + 360 / 36, 6);
  expect(fast.battery_Whpkm).toBeCloseTo((150 + 0.03 * 72 * 72) / 3.6 / 0.8 + 360 / 72, 6);
  expect(slow.efficiency_frac).toBeCloseTo(0.8, 9);
  expect(slow.motor_rpm).toBeCloseTo((10 * 20 * 60) / (2 * Math.PI), 6);
});

it("has the range that this energy gives from ceiling to floor", () => {
  const [row] = steadyTable(bareJob(car), 0, [50]);
  // 0.85 of 20 Ah at 400 V.
  expect(row.range_km).toBeCloseTo((0.85 * 20 * 400) / row.battery_Whpkm, 3);
});

it("says where a speed is not held and what holds the car back", () => {
  const weak = bareJob({ ...car, motor: { envelope: { kind: "peak", torque_Nm: 15, power_kW: 2000 } } });
  const [held, notHeld] = steadyTable(weak, 0, [60, 100]);
  expect(held.isHeld).toBe(true);
  expect(held.limit).toBe("none");
  expect(notHeld.isHeld).toBe(false);
  expect(notHeld.limit).toBe("motor");
});

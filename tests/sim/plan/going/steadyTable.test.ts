import { describe, expect, it } from "vitest";
import { steadyTable } from "../../../../sim/plan/going/steadyTable.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

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

it("has each of what the road asks by itself", () => {
  const physical: Changes = {
    ...car,
    vehicle: {
      kerb_kg: 1399,
      tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
      roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2, wheelDrag_Nm: 6 },
    },
  };
  const [row] = steadyTable(bareJob(physical), 0, [36]);
  expect(row.rolling_N).toBeCloseTo(1400 * 9.81 * 0.01, 9);
  expect(row.aero_N).toBeCloseTo(0.5 * 1.189 * 100, 9);
  expect(row.drag_N).toBeCloseTo(20, 9);
  expect(row.motor_Nm).toBeCloseTo((row.rolling_N + row.aero_N + row.drag_N) / 20, 9);
});

it("has no energy and no efficiency of a car that comes to rest, and none of a motor that does nothing", () => {
  const dead = bareJob({ ...car, controller: { min_V: 900, regen: { isOn: false } } });
  const [row] = steadyTable(dead, 0, [36]);
  expect(row).toMatchObject({ battery_Whpkm: 0, efficiency_frac: 0, motor_rpm: 0, isHeld: false, heldAlways_kmh: 0 });
});

it("finds the highest speed held once, for the first that is not, and whole", () => {
  const weak = bareJob({ ...car, motor: { envelope: { kind: "peak", torque_Nm: 15, power_kW: 2000 } } });
  const rows = steadyTable(weak, 0, [60, 71.5, 100]);
  expect(rows.map(({ heldAlways_kmh }) => heldAlways_kmh)).toEqual([undefined, 71, 71]);
});

it("finds the highest speed held to one km/h", () => {
  const highest = (torque_Nm: number) =>
    steadyTable(bareJob({ ...car, motor: { envelope: { kind: "peak", torque_Nm, power_kW: 2000 } } }), 0, [100])[0]
      .heldAlways_kmh;
  // (20 N a newton metre less 150 N) over 0.03 N/(km/h)2, its root and half a km/h more, whole.
  const byHand = (torque_Nm: number) => Math.floor(Math.sqrt((20 * torque_Nm - 150) / 0.03) + 0.5);
  for (const torque_Nm of [10, 12, 14, 16, 17, 18]) expect(highest(torque_Nm)).toBe(byHand(torque_Nm));
});

it("has no range at a speed that is not held, but what holds the car back", () => {
  const weak = bareJob({ ...car, motor: { envelope: { kind: "peak", torque_Nm: 15, power_kW: 2000 } } });
  const [held, notHeld] = steadyTable(weak, 0, [60, 100]);
  expect(held.isHeld).toBe(true);
  expect(held.limit).toBe("none");
  expect(notHeld.isHeld).toBe(false);
  expect(notHeld.limit).toBe("motor");
  expect(notHeld.range_km).toBeUndefined();
  expect(notHeld.heldFor_s).toBe(0);
  // 15 Nm are 300 N at the tyres: 150 N and 0.03 N/(km/h)2 leave 70.7 km/h, and 0.5 km/h is allowed for.
  expect(notHeld.heldAlways_kmh).toBe(71);
});

describe("a motor that gets too hot", () => {
  /** 20 % of the shaft power is heat into 20 kJ/K, cooled by 20 W/K; torque goes from full to none between 140 and 150 degC. */
  const heat = { capacity_kJpK: 20, cooling_WpK: 20, derateFrom_degC: 140, derateTo_degC: 150 };
  const hot = bareJob({
    ...car,
    motor: {
      ...car.motor,
      loss: { kind: "flat", efficiency_frac: 0.8 },
      envelope: { kind: "peak", torque_Nm: 60, power_kW: 20 },
      heat,
    },
    module: { capacity_Ah: 200 },
  });
  const loss_W = (speed_kmh: number) => ((150 + 0.03 * speed_kmh ** 2) * speed_kmh) / 3.6 / 4;
  const [slow, fast] = steadyTable(hot, 0, [60, 110]);

  it("is told as it is ten minutes after the start: this one gives way after sixteen", () => {
    // 20 kJ/K at 3.9 kW, cooled by 20 W/K, take 120 K in 950 s.
    expect(fast.battery_Whpkm).toBeCloseTo((150 + 0.03 * 110 ** 2) / 3.6 / 0.8 + 360 / 110, 6);
    expect(fast.heldFor_s).toBeGreaterThan(900);
    expect(fast.heldFor_s).toBeLessThan(1200);
  });

  it("holds a speed at which it stays cool until the pack is empty", () => {
    expect(loss_W(60) / 20).toBeLessThan(100);
    expect(slow.isHeld).toBe(true);
    expect(slow.range_km).toBeGreaterThan(200);
  });

  it("holds one at which it does not as long as the warming of one lump of heat takes, with no range", () => {
    expect(fast.isHeld).toBe(false);
    expect(fast.limit).toBe("heat");
    expect(fast.range_km).toBeUndefined();
    // C/G ln(1 / (1 - dT G / P)): from 20 degC to where the derating begins, and to where it has taken all.
    const warmed_s = (rise_K: number) => -(20_000 / 20) * Math.log(1 - (rise_K * 20) / loss_W(110));
    expect(fast.heldFor_s).toBeGreaterThan(warmed_s(120) - 30);
    expect(fast.heldFor_s).toBeLessThan(warmed_s(130));
  });

  it("names the highest speed that is held: the motor then settles within its derating", () => {
    const { heldAlways_kmh = 0 } = fast;
    // Of the 20 kW that the motor has at most, what is left after derating is what the speed takes: F v.
    const left_frac = (speed_kmh: number) => (4 * loss_W(speed_kmh)) / 20_000;
    const settled_degC = (speed_kmh: number) => 20 + loss_W(speed_kmh) / 20;
    const isHeld = (speed_kmh: number) => settled_degC(speed_kmh) <= 140 + 10 * (1 - left_frac(speed_kmh));
    expect(isHeld(heldAlways_kmh - 1)).toBe(true);
    expect(isHeld(heldAlways_kmh + 1)).toBe(false);
  });
});

it("counts as empty a pack that at the end of its charge gives less than the speed takes", () => {
  const sagging = bareJob({
    ...car,
    module: {
      capacity_Ah: 20,
      resistance: { soc_frac: [0, 0.2, 0.25, 1], module_mohm: [9000, 9000, 100, 100] },
    },
  });
  const [row] = steadyTable(sagging, 0, [100]);
  expect(row.isHeld).toBe(true);
  // 0.95 to about a quarter of 20 Ah at 400 V.
  expect(row.range_km).toBeLessThan((0.76 * 20 * 400) / row.battery_Whpkm);
  expect(row.range_km).toBeGreaterThan((0.68 * 20 * 400) / row.battery_Whpkm);
});

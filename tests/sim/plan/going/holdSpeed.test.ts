import { expect, it } from "vitest";
import { holdSpeed } from "../../../../sim/plan/going/holdSpeed.ts";
import { LIMITS } from "../../../../sim/step/limits.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** 300 N all the way: a pack of 400 V and half of 1 Ah holds 720 kJ, 2400 m of that. */
const small: Changes = {
  vehicle: { roadLoad: { kind: "coastDown", f0_N: 300, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  module: { capacity_Ah: 1 },
  pack: { floor_frac: 0.25, ceiling_frac: 0.75 },
};
const held = (speed_mps: number, changes: Changes = {}, sinSlope = 0) => {
  const job = bareJob({ ...small, ...changes });
  return holdSpeed(prepare(job, job.packs[0]), speed_mps, sinSlope);
};
const thrust = (newtons: number) => ({ envelope: { kind: "peak" as const, torque_Nm: newtons / 20, power_kW: 2000 } });

it("goes as far as the energy of the pack over the force, the last step cut in proportion", () => {
  const hold = held(10);
  expect(hold).toMatchObject({ isHeld: true, isAtLeast: false, limit: 0 });
  expect(hold.distance_m).toBeCloseTo(2400, 6);
  expect(hold.held_s).toBeCloseTo(240, 7);
});

it("pays for the height of a slope as well", () => {
  const hold = held(10, {}, 0.05);
  expect(hold.distance_m).toBeCloseTo(720_000 / (300 + 1400 * 9.81 * 0.05), 6);
});

it("ends at once where the motor cannot keep the speed, and says what held it back", () => {
  expect(held(10, { motor: thrust(200) })).toMatchObject({ isHeld: false, distance_m: 0, held_s: 0, isAtLeast: false });
  expect(LIMITS[held(10, { motor: thrust(200) }).limit]).toBe("motor");
  expect(held(10, { motor: thrust(400) }).isHeld).toBe(true);
  // 400 N are 300 N of rolling and a slope of 0.7 %.
  expect(held(10, { motor: thrust(400) }, 0.008).isHeld).toBe(false);
});

it("counts a speed as held within half a kilometre an hour", () => {
  // A motor that ends at 9.9 m/s or 9.8 m/s, 0.36 and 0.72 km/h below what is asked.
  const ending = (top_mps: number) => ({ motor: { maxSpeed_rpm: (top_mps * 20 * 30) / Math.PI, rollBack_rpm: 1 } });
  expect(held(10, ending(9.9)).isHeld).toBe(true);
  expect(held(10, ending(9.8)).isHeld).toBe(false);
});

it("takes a pack that sags below the speed for empty only late in its window", () => {
  const sagging = (from: number) => ({
    module: {
      capacity_Ah: 1,
      // 8 A at 10 m/s; the lowest voltage is met where the cells fall away.
      openCircuit: { soc_frac: [0, from, from + 0.01, 1], cell_V: [3, 3, 4, 4] },
      cellMin_V: 3.5,
    },
  });
  // Used shares of the window of 0.75 to 0.25 at which it gives way: 88 % and 48 %.
  expect(held(10, sagging(0.3)).isHeld).toBe(true);
  expect(held(10, sagging(0.5))).toMatchObject({ isHeld: false });
  expect(LIMITS[held(10, sagging(0.5)).limit]).toBe("pack");
});

it("is at least what a day gives where the pack is not empty by then", () => {
  const hold = held(10, { module: { capacity_Ah: 2000 } });
  expect(hold).toMatchObject({ isHeld: true, isAtLeast: true, held_s: 24 * 3600 });
  expect(hold.distance_m).toBeCloseTo(864_000, 3);
});

import { expect, it } from "vitest";
import { wheelEnergy_J } from "../../../../../sim/route/clean/draws/wheelEnergy.ts";

const load = { mass_kg: 1000, f0_N: 100, f1_Npmps: 2, f2_Npmps2: 0.5 };

it("is force times way over the second: road, inertia with 3 % that turns, and height", () => {
  // At 10 m/s 100 + 20 + 50 N; from 9.5 to 10.5 m/s 1030 N more; 1 m up 9806.65 J.
  expect(wheelEnergy_J(load, 10, 10, 0)).toBeCloseTo(1700, 9);
  expect(wheelEnergy_J(load, 9.5, 10.5, 0)).toBeCloseTo(12_000, 9);
  expect(wheelEnergy_J(load, 10, 10, 1)).toBeCloseTo(1700 + 9806.65, 9);
});

it("is none where the car brakes or stands", () => {
  expect(wheelEnergy_J(load, 10, 8, 0)).toBe(0);
  expect(wheelEnergy_J(load, 0, 0, 1)).toBe(0);
});

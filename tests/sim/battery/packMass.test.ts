import { expect, it } from "vitest";
import { packMass_kg } from "../../../sim/battery/packMass.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const { packs, module } = inventedJob();

it("is the modules and their boxes", () => {
  expect(packMass_kg({ ...packs[1], boxes_frac: 0.25 }, { ...module, mass_kg: 9 })).toBeCloseTo(16 * 9 * 1.25, 9);
});

it("of a pack given whole is its energy times the mass for each kWh, boxes in it", () => {
  const whole = { energy_kWh: 12, nominal_V: 96, mass_kgpkWh: 8 };
  expect(packMass_kg({ ...packs[1], boxes_frac: 0.25, whole }, module)).toBeCloseTo(96, 9);
});

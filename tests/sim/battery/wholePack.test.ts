import { expect, it } from "vitest";
import { preparePack } from "../../../sim/battery/preparePack.ts";
import { asModules } from "../../../sim/battery/wholePack.ts";
import { packFigures } from "../../../sim/plan/drive/packFigures.ts";
import { demoJob } from "../../support/demoJob.ts";

const { packs, module } = demoJob();
const [pack] = packs;

it("has the energy asked for, and the voltage to half a cell", () => {
  const whole = { energy_kWh: 12, nominal_V: 96, mass_kgpkWh: 8 };
  const figures = packFigures({ ...pack, whole }, module, preparePack({ ...pack, whole }, module));
  // 1e-3: two ways of integrating the open-circuit curve
  expect(Math.abs(figures.nominal_kWh / 12 - 1)).toBeLessThan(1e-3);
  expect(Math.abs(figures.nominal_V - 96)).toBeLessThan(0.5 * module.cellMax_V);
  expect(figures.mass_kg).toBeCloseTo(96, 9);
});

it("behaves as the pack of modules that has the same cells", () => {
  const made = preparePack(pack, module);
  const figures = packFigures(pack, module, preparePack(pack, module));
  const whole = {
    energy_kWh: figures.nominal_kWh,
    nominal_V: figures.nominal_V,
    mass_kgpkWh: figures.mass_kg / figures.nominal_kWh,
  };
  const same = preparePack({ ...pack, whole }, module);
  // 1e-3 as above; volts are those of the same whole number of cells
  const near = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(1e-3);
  near(same.capacity_C, made.capacity_C);
  near(same.max_V, made.max_V);
  near(same.discharge.peak_A, made.discharge.peak_A);
  near(same.openCircuit_V.values[100], made.openCircuit_V.values[100]);
  near(same.resistance_ohm.values[100], made.resistance_ohm.values[100]);
});

it("leaves a pack of modules as it is", () => {
  expect(asModules(pack, module)).toEqual({ pack, module });
});

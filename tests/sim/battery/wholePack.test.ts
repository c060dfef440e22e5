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

it("stores and gives off heat as modules of its mass do, and has each current by its capacity", () => {
  const heat = { capacity_kJpK: 12, cooling_WpK: 1.5, derateFrom_degC: 45, derateTo_degC: 60 };
  const discharge = { continuous_A: 80, peak_A: 200, peak_s: 10 };
  const charge = { continuous_A: 30, peak_A: 60, peak_s: 20 };
  const whole = { energy_kWh: 3 * module.mass_kg, nominal_V: 96, mass_kgpkWh: 2 };
  const made = asModules({ ...pack, whole }, { ...module, heat, discharge, charge }).module;
  expect(made.mass_kg).toBeCloseTo(6 * module.mass_kg, 9);
  expect(made.heat?.capacity_kJpK).toBeCloseTo(6 * 12, 9);
  expect(made.heat?.cooling_WpK).toBeCloseTo(6 * 1.5, 9);
  const larger = made.capacity_Ah / module.capacity_Ah;
  expect(made.discharge.continuous_A).toBeCloseTo(80 * larger, 9);
  expect(made.discharge.peak_A).toBeCloseTo(200 * larger, 9);
  expect(made.charge.continuous_A).toBeCloseTo(30 * larger, 9);
  expect(made.charge.peak_s).toBe(20);
});

it("has as many amperes-hours as its energy takes at the mean voltage of its cells", () => {
  // Straight from 3 to 4 V: 3.5 V on average; 96 V are 27 such cells.
  const straight = { ...module, openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] } };
  const made = asModules({ ...pack, whole: { energy_kWh: 12, nominal_V: 96, mass_kgpkWh: 8 } }, straight);
  expect(made.module.seriesCells).toBe(27);
  expect(made.module.capacity_Ah).toBeCloseTo(12_000 / (27 * 3.5), 9);
  expect(made.pack).toMatchObject({ seriesModules: 1, parallelModules: 1, boxes_frac: 0 });
  const low = asModules({ ...pack, whole: { energy_kWh: 12, nominal_V: 1, mass_kgpkWh: 8 } }, straight);
  expect(low.module.seriesCells).toBe(1);
});

it("holds its energy on the very curve that the step looks up", () => {
  const whole = { energy_kWh: 12, nominal_V: 96, mass_kgpkWh: 8 };
  const { capacity_C, openCircuit_V } = preparePack({ ...pack, whole }, module);
  // Straight lines between the table's values, of which the last stands twice: trapezoids are exact.
  const { values } = openCircuit_V;
  const intervals = values.length - 2;
  let mean_V = 0;
  for (let i = 0; i < intervals; i++) mean_V += (values[i] + values[i + 1]) / 2 / intervals;
  expect((mean_V * capacity_C) / 3600).toBeCloseTo(12_000, 8);
});

it("leaves a pack of modules as it is", () => {
  expect(asModules(pack, module)).toEqual({ pack, module });
});

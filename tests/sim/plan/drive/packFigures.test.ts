import { expect, it } from "vitest";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { openCircuitEnergy_J, packFigures } from "../../../../sim/plan/drive/packFigures.ts";
import { bareJob } from "../../../support/bareCar.ts";

// A straight curve from 3 to 4 V: energies by hand.
const job = bareJob({
  module: {
    seriesCells: 10,
    capacity_Ah: 50,
    openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] },
    cellMin_V: 2.8,
    cellMax_V: 4.2,
    mass_kg: 20,
  },
  pack: { seriesModules: 3, parallelModules: 2, ceiling_frac: 0.9, floor_frac: 0.1, boxes_frac: 0.3 },
});
const figures = packFigures(job.packs[0], job.module, preparePack(job.packs[0], job.module));

it("has the whole charge at the mean of its curve as nominal energy", () => {
  expect(figures.nominal_V).toBeCloseTo(105, 9);
  expect(figures.nominal_kWh).toBeCloseTo(10.5, 9);
});

it("has the energy between floor and ceiling as usable", () => {
  expect(figures.usable_kWh).toBeCloseTo(0.8 * 10.5, 9);
  const upper = openCircuitEnergy_J(preparePack(job.packs[0], job.module), 0.5, 0.9);
  expect(upper).toBeCloseTo(0.4 * 100 * 3600 * 30 * 3.7, 0);
});

it("has its cells' voltage window and its boxes' mass", () => {
  expect([figures.min_V, figures.max_V]).toEqual([84, 126]);
  expect(figures.mass_kg).toBeCloseTo(6 * 20 * 1.3, 9);
});

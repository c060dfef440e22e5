import { describe, expect, it } from "vitest";
import { modules } from "../../../shared/parts/modules.ts";

type Module = (typeof modules)[number]["data"];

/** Energy between empty and full at open circuit, by the trapezoid over the module's own curve. */
function energy_Wh({ openCircuit, seriesCells, capacity_Ah }: Module): number {
  const { soc_frac, cell_V } = openCircuit;
  let mean_V = 0;
  for (let i = 1; i < soc_frac.length; i++)
    mean_V += 0.5 * (cell_V[i] + cell_V[i - 1]) * (soc_frac[i] - soc_frac[i - 1]);
  return mean_V * seriesCells * capacity_Ah;
}

it("there are reclaimed and new ones of both chemistries", () => {
  const sorts = new Set(modules.map(({ data }) => `${data.condition} ${data.chemistry}`));
  expect(sorts.size).toBe(4);
});

describe.each(modules.map(({ id, data }) => [id, data] as const))("%s", (_, module) => {
  it("weighs what its energy usually weighs", () => {
    // Common practice, no source: 90 to 160 Wh/kg reclaimed, 130 to 180 new; iron phosphate 100 to 140 whichever.
    const [low_Whpkg, high_Whpkg] = module.condition === "reclaimed" ? [90, 160] : [130, 180];
    const density_Whpkg = energy_Wh(module) / module.mass_kg;
    expect(density_Whpkg).toBeGreaterThan(low_Whpkg);
    expect(density_Whpkg).toBeLessThan(high_Whpkg);
    if (module.chemistry === "ironPhosphate") {
      expect(density_Whpkg).toBeGreaterThan(100);
      expect(density_Whpkg).toBeLessThan(140);
    }
  });

  it("takes the room its energy usually takes", () => {
    // Common practice, no source: 200 to 400 Wh/l of the module alone.
    const volume_l = (module.length_mm * module.width_mm * module.height_mm) / 1e6;
    expect(energy_Wh(module) / volume_l).toBeGreaterThan(200);
    expect(energy_Wh(module) / volume_l).toBeLessThan(400);
  });

  it("has 0.5 to 2 mohm for each cell in series half charged", () => {
    // Common practice, no source.
    const half = module.resistance.soc_frac.indexOf(0.5);
    const cell_mohm = module.resistance.module_mohm[half] / module.seriesCells;
    expect(cell_mohm).toBeGreaterThanOrEqual(0.5);
    expect(cell_mohm).toBeLessThanOrEqual(2);
  });

  it("keeps cell voltages in the window of its chemistry", () => {
    // Common practice, no source: 4.2 to 3.0 V nickel (a little lower under load), 3.6 to 2.5 V iron phosphate.
    const [low_V, high_V] = module.chemistry === "nickel" ? [2.5, 4.2] : [2.5, 3.65];
    expect(module.cellMin_V).toBeGreaterThanOrEqual(low_V);
    expect(module.cellMax_V).toBeLessThanOrEqual(high_V);
    expect(module.openCircuit.cell_V.at(-1)).toBeLessThanOrEqual(module.cellMax_V);
  });

  it("sags by no more than a fifth at its peak current half charged and warm", () => {
    const half = module.resistance.soc_frac.indexOf(0.5);
    const drop_V = (module.discharge.peak_A * module.resistance.module_mohm[half]) / 1000;
    const rested_V = module.seriesCells * module.openCircuit.cell_V[module.openCircuit.soc_frac.indexOf(0.5)];
    expect(drop_V / rested_V).toBeLessThan(0.2);
  });

  it("has about 1 kJ/K for each kilogram", () => {
    expect(module.heat?.capacity_kJpK ?? 0).toBeGreaterThan(0.8 * module.mass_kg);
    expect(module.heat?.capacity_kJpK ?? 0).toBeLessThan(1.2 * module.mass_kg);
  });
});

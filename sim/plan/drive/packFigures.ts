import type { Module, Pack } from "../../../shared/job/schema/battery.ts";
import { J_PER_KWH } from "../../../shared/units.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import type { PackModel } from "../../battery/packModel.ts";
import { lookUp } from "../../math/uniformTable.ts";
import type { Candidate } from "../driveReport.ts";

/**
 * Open-circuit energy between two states of charge, in joules: the integral of voltage over charge, by trapezoids on the
 * table that the step looks up.
 */
export function openCircuitEnergy_J(pack: PackModel, from_frac: number, to_frac: number): number {
  const pieces = 512;
  let sum_V = 0;
  for (let i = 0; i <= pieces; i++) {
    const weight = i === 0 || i === pieces ? 0.5 : 1;
    sum_V += weight * lookUp(pack.openCircuit_V, from_frac + ((to_frac - from_frac) * i) / pieces);
  }
  return (sum_V / pieces) * (to_frac - from_frac) * pack.capacity_C;
}

/** What a candidate pack is, before it is driven; `model` is that pack in SI. Nominal voltage is the mean open-circuit one over the whole charge. */
export function packFigures(pack: Pack, module: Module, model: PackModel): Candidate["pack"] {
  const nominal_J = openCircuitEnergy_J(model, 0, 1);
  return {
    seriesModules: pack.seriesModules,
    parallelModules: pack.parallelModules,
    nominal_kWh: nominal_J / J_PER_KWH,
    usable_kWh: openCircuitEnergy_J(model, pack.floor_frac, pack.ceiling_frac) / J_PER_KWH,
    mass_kg: packMass_kg(pack, module),
    nominal_V: nominal_J / model.capacity_C,
    min_V: model.min_V,
    max_V: model.max_V,
  };
}

import type { Module, Pack } from "../../shared/job/schema/battery.ts";
import { WH_PER_KWH } from "../../shared/units.ts";
import { uniformTable } from "../math/uniformTable.ts";

/**
 * A pack with the module it is made of. A pack given whole, as energy, nominal voltage and mass, becomes a single module of
 * cells like those of the job's module:
 *
 *   cells = U / mean open-circuit voltage of a cell, rounded;  Q = E / (cells x that voltage)
 *
 * A cell's resistance goes with the inverse of its capacity and its currents with capacity (cells of one make side by side:
 * Kirchhoff); what it stores and gives off as heat goes with mass. A pack of modules is returned as it is.
 */
export function asModules(pack: Pack, module: Module): { pack: Pack; module: Module } {
  const { whole } = pack;
  if (whole === undefined) return { pack, module };
  const cell_V = meanVoltage_V(module);
  const seriesCells = Math.max(1, Math.round(whole.nominal_V / cell_V));
  const capacity_Ah = (whole.energy_kWh * WH_PER_KWH) / (seriesCells * cell_V);
  const mass_kg = whole.energy_kWh * whole.mass_kgpkWh;
  const larger_ratio = capacity_Ah / module.capacity_Ah;
  const perResistance_ratio = seriesCells / module.seriesCells / larger_ratio;
  const current = ({ continuous_A, peak_A, peak_s }: Module["discharge"]) => ({
    continuous_A: continuous_A * larger_ratio,
    peak_A: peak_A * larger_ratio,
    peak_s,
  });
  const { heat } = module;
  return {
    pack: { ...pack, seriesModules: 1, parallelModules: 1, boxes_frac: 0 },
    module: {
      ...module,
      seriesCells,
      capacity_Ah,
      mass_kg,
      resistance: {
        ...module.resistance,
        module_mohm: module.resistance.module_mohm.map((each_mohm) => each_mohm * perResistance_ratio),
      },
      discharge: current(module.discharge),
      charge: current(module.charge),
      ...(heat && {
        heat: {
          ...heat,
          capacity_kJpK: (heat.capacity_kJpK * mass_kg) / module.mass_kg,
          cooling_WpK: (heat.cooling_WpK * mass_kg) / module.mass_kg,
        },
      }),
    },
  };
}

/** Mean open-circuit voltage of a cell over its whole charge, in volts: trapezoids on the curve that the step looks up. */
function meanVoltage_V({ openCircuit: { soc_frac, cell_V } }: Module): number {
  const intervals = 256;
  const { values } = uniformTable(soc_frac, cell_V, intervals);
  let sum_V = (values[0] + values[intervals]) / 2;
  for (let i = 1; i < intervals; i++) sum_V += values[i];
  return sum_V / intervals;
}

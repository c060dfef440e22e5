import type { Module, Pack } from "../../shared/job/battery.ts";
import { C_PER_AH, OHM_PER_MOHM, ZERO_CELSIUS_K } from "../../shared/units.ts";
import { asModules } from "../battery/wholePack.ts";
import { uniformTable } from "../math/uniformTable.ts";
import type { CurrentLimit, PackModel } from "./model.ts";
import { prepareHeat } from "./prepareMotor.ts";

const INTERVALS = 256;

/**
 * A candidate pack in SI: cells and modules in series add volts and ohms, strings in parallel add capacity and amperes.
 * Every module is taken as alike (assumed: of reclaimed ones the weakest decides, so its tested capacity is the one to enter).
 */
export function preparePack(given: Pack, of: Module): PackModel {
  const { pack, module } = asModules(given, of);
  const { seriesModules, parallelModules } = pack;
  const cells = seriesModules * module.seriesCells;
  const { openCircuit, resistance, resistanceByTemperature, coldCharge } = module;
  const current = (limit: Module["discharge"]): CurrentLimit => {
    const continuous_A = limit.continuous_A * parallelModules;
    const peak_A = limit.peak_A * parallelModules;
    return { continuous_A, peak_A, budget_A2s: (peak_A * peak_A - continuous_A * continuous_A) * limit.peak_s };
  };
  return {
    capacity_C: module.capacity_Ah * C_PER_AH * parallelModules,
    openCircuit_V: uniformTable(
      openCircuit.soc_frac,
      openCircuit.cell_V.map((cell_V) => cell_V * cells),
      INTERVALS,
    ),
    resistance_ohm: uniformTable(
      resistance.soc_frac,
      resistance.module_mohm.map((module_mohm) => (module_mohm * OHM_PER_MOHM * seriesModules) / parallelModules),
      INTERVALS,
    ),
    resistance_ratio: uniformTable(
      resistanceByTemperature.temperature_degC.map((temperature_degC) => temperature_degC + ZERO_CELSIUS_K),
      resistanceByTemperature.resistance_ratio,
      INTERVALS,
    ),
    charging_ratio: module.charging_ratio,
    leads_ohm: pack.leads_mohm * OHM_PER_MOHM,
    discharge: current(module.discharge),
    charge: current(module.charge),
    coldChargeNone_K: coldCharge.none_degC + ZERO_CELSIUS_K,
    coldChargeFull_K: coldCharge.full_degC + ZERO_CELSIUS_K,
    min_V: module.cellMin_V * cells,
    max_V: module.cellMax_V * cells,
    ceiling_frac: pack.ceiling_frac,
    regenTo_frac: pack.regenTo_frac ?? pack.ceiling_frac,
    floor_frac: pack.floor_frac,
    heat: prepareHeat(module.heat, seriesModules * parallelModules),
  };
}

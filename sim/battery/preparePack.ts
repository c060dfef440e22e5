import type { Module, Pack } from "../../shared/job/schema/battery.ts";
import { C_PER_AH, OHM_PER_MOHM, ZERO_CELSIUS_K } from "../../shared/units.ts";
import { prepareHeat } from "../math/heatLump.ts";
import { uniformTable } from "../math/uniformTable.ts";
import { currentLimit } from "./currentLimit.ts";
import type { PackModel } from "./packModel.ts";
import { weakest_Ah } from "./testedModules.ts";
import { asModules } from "./wholePack.ts";

const INTERVALS = 256;
/** No pack has less; voltages are divided by it. */
const LEAST_ohm = 1e-12;

/** What age and cold make of a pack: shares of its capacity and of its usable window, and times its modules' resistance. */
export interface Wear {
  readonly capacity_frac: number;
  readonly usable_frac: number;
  readonly resistance_ratio: number;
}

/** A pack as tested, in the weather it was tested in. */
export const NO_WEAR: Wear = { capacity_frac: 1, usable_frac: 1, resistance_ratio: 1 };

/** A pack that was prepared, and what of. */
interface PreparedPack {
  readonly pack: Pack;
  readonly module: Module;
  readonly model: PackModel;
  readonly wear: Wear;
}

/**
 * A candidate pack in SI: cells and modules in series add volts and ohms, strings in parallel add capacity and amperes.
 * Every module is taken as alike: where each was tested, as the weakest that is used.
 * Age takes charge and adds resistance, leads apart; what the cold keeps back lies at the bottom of the window, so that the floor rises.
 * A table that would be the same as that of another pack is that one's.
 */
export function preparePack(given: Pack, of: Module, wear: Wear = NO_WEAR, like?: PreparedPack): PackModel {
  if (like && given.whole !== undefined && given === like.pack && of === like.module && isSameWear(wear, like.wear))
    return like.model;
  const { pack, module } = asModules(given, of);
  const { seriesModules, parallelModules } = pack;
  const cells = seriesModules * module.seriesCells;
  const { openCircuit, resistance, resistanceByTemperature, coldCharge } = module;
  const shared = like && given.whole === undefined && like.pack.whole === undefined ? like : undefined;
  const isSameSeries = shared?.pack.seriesModules === seriesModules && shared.module.seriesCells === module.seriesCells;
  const isSameLayout = shared?.pack.seriesModules === seriesModules && shared.pack.parallelModules === parallelModules;
  return {
    capacity_C: weakest_Ah(module, seriesModules * parallelModules) * C_PER_AH * parallelModules * wear.capacity_frac,
    openCircuit_V:
      shared && isSameSeries && shared.module.openCircuit === openCircuit
        ? shared.model.openCircuit_V
        : uniformTable(
            openCircuit.soc_frac,
            openCircuit.cell_V.map((cell_V) => cell_V * cells),
            INTERVALS,
          ),
    resistance_ohm:
      shared &&
      isSameLayout &&
      shared.module.resistance === resistance &&
      shared.wear.resistance_ratio === wear.resistance_ratio
        ? shared.model.resistance_ohm
        : uniformTable(
            resistance.soc_frac,
            resistance.module_mohm.map((module_mohm) =>
              Math.max(
                LEAST_ohm,
                (module_mohm * OHM_PER_MOHM * seriesModules * wear.resistance_ratio) / parallelModules,
              ),
            ),
            INTERVALS,
          ),
    resistance_ratio:
      shared?.module.resistanceByTemperature === resistanceByTemperature
        ? shared.model.resistance_ratio
        : uniformTable(
            resistanceByTemperature.temperature_degC.map((temperature_degC) => temperature_degC + ZERO_CELSIUS_K),
            resistanceByTemperature.resistance_ratio,
            INTERVALS,
          ),
    charging_ratio: module.charging_ratio,
    leads_ohm: pack.leads_mohm * OHM_PER_MOHM,
    discharge: currentLimit(module.discharge, parallelModules),
    charge: currentLimit(module.charge, parallelModules),
    coldChargeNone_K: coldCharge.none_degC + ZERO_CELSIUS_K,
    coldChargeFull_K: coldCharge.full_degC + ZERO_CELSIUS_K,
    min_V: module.cellMin_V * cells,
    max_V: module.cellMax_V * cells,
    ceiling_frac: pack.ceiling_frac,
    regenTo_frac: pack.regenTo_frac ?? pack.ceiling_frac,
    floor_frac: pack.floor_frac + (1 - wear.usable_frac) * (pack.ceiling_frac - pack.floor_frac),
    heat: prepareHeat(module.heat, seriesModules * parallelModules),
  };
}

function isSameWear(a: Wear, b: Wear): boolean {
  return (
    a.capacity_frac === b.capacity_frac && a.usable_frac === b.usable_frac && a.resistance_ratio === b.resistance_ratio
  );
}

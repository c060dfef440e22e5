import type { Module, Pack } from "../../../shared/job/schema/battery.ts";
import { C_PER_AH, J_PER_KWH, OHM_PER_MOHM } from "../../../shared/units.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import type { PackModel } from "../../battery/packModel.ts";
import { preparePack } from "../../battery/preparePack.ts";
import { terminalCurrent_A } from "../../battery/terminalCurrent.ts";
import { weakest_Ah } from "../../battery/testedModules.ts";
import { lookUp } from "../../math/uniformTable.ts";
import { openCircuitEnergy_J } from "../drive/packFigures.ts";
import type { RoadPower } from "./roadPower.ts";

/** Volts, amperes and kilograms of a layout, before it is driven. */
export interface LayoutFigures {
  readonly full_V: number;
  /** Mean open-circuit voltage over the whole charge. */
  readonly nominal_V: number;
  /** Nearly empty, giving what the road asks for ten seconds; 0 where it cannot give that. */
  readonly loaded_V: number;
  /** The lowest that its cells may come to. */
  readonly flat_V: number;
  /** Current of each string over the road, root mean square; and for ten seconds and for a moment of it, nearly empty. */
  readonly string_A: { readonly rms: number; readonly tenSeconds: number; readonly peak: number };
  readonly nominal_kWh: number;
  readonly usable_kWh: number;
  readonly mass_kg: number;
}

/**
 * What layouts of a module are, for what a road asks of them, at 25 degC. Their tables are those of one module: in series volts and ohms
 * add, side by side amperes do (Kirchhoff), so that none is made for each.
 */
export function layoutFigures(module: Module, road: RoadPower): (pack: Pack) => LayoutFigures {
  const single: Pack = {
    name: "1s1p",
    seriesModules: 1,
    parallelModules: 1,
    ceiling_frac: 1,
    floor_frac: 0,
    boxes_frac: 0,
    leads_mohm: 0,
  };
  const one = preparePack(single, module);
  return (pack) => figuresOf(module, one, road, pack);
}

function figuresOf(module: Module, one: PackModel, road: RoadPower, pack: Pack): LayoutFigures {
  const { seriesModules: series, parallelModules: parallel, floor_frac, ceiling_frac } = pack;
  const modules = series * parallel;
  const capacity_C = weakest_Ah(module, modules) * C_PER_AH;
  const energy_kWh = (from_frac: number, to_frac: number) =>
    (modules * openCircuitEnergy_J(one, from_frac, to_frac) * (capacity_C / one.capacity_C)) / J_PER_KWH;
  const at = (soc_frac: number) => ({
    open_V: series * lookUp(one.openCircuit_V, soc_frac),
    ohm: (series / parallel) * lookUp(one.resistance_ohm, soc_frac) + pack.leads_mohm * OHM_PER_MOHM,
  });
  const [empty, middle] = [at(floor_frac), at(0.5 * (floor_frac + ceiling_frac))];
  const emptyCurrent_A = (power_W: number) => terminalCurrent_A(power_W, empty.open_V, empty.ohm);
  const cannotGive = 4 * empty.ohm * road.tenSeconds_W > empty.open_V * empty.open_V;
  const nominal_kWh = energy_kWh(0, 1);
  return {
    full_V: series * one.max_V,
    nominal_V: (nominal_kWh * J_PER_KWH) / (parallel * capacity_C),
    loaded_V: cannotGive ? 0 : empty.open_V - empty.ohm * emptyCurrent_A(road.tenSeconds_W),
    flat_V: series * one.min_V,
    string_A: {
      rms: terminalCurrent_A(road.rms_W, middle.open_V, middle.ohm) / parallel,
      tenSeconds: emptyCurrent_A(road.tenSeconds_W) / parallel,
      peak: emptyCurrent_A(road.peak_W) / parallel,
    },
    nominal_kWh,
    usable_kWh: energy_kWh(floor_frac, ceiling_frac),
    mass_kg: packMass_kg(pack, module),
  };
}

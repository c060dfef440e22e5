import type { Supply } from "../../shared/job/schema/supply.ts";
import { preparePack } from "../../sim/battery/preparePack.ts";
import { type Charge, chargePack } from "../../sim/plan/charging/chargePack.ts";
import { chargeSetting } from "../../sim/plan/charging/chargeSetting.ts";
import { bareJob, type Changes } from "./bareCar.ts";

/** A pack of 20 cells in series over 60 Ah, charged and emptied in full, whose open-circuit voltage rises straight from 40 to 80 V, behind 0.1 ohm. */
export const straightPack: Changes = {
  module: {
    seriesCells: 20,
    capacity_Ah: 60,
    openCircuit: { soc_frac: [0, 1], cell_V: [2, 4] },
    resistance: { soc_frac: [0, 1], module_mohm: [100, 100] },
    cellMin_V: 1,
    cellMax_V: 4,
    charge: { continuous_A: 30, peak_A: 30, peak_s: 0 },
  },
  pack: { ceiling_frac: 1, floor_frac: 0 },
};

/** A pack that is all voltage: 400 V whatever its charge, without resistance. `energy_kWh` is all that it holds. */
export function flatPack(energy_kWh: number): Changes {
  return {
    module: { seriesCells: 100, capacity_Ah: energy_kWh / 0.4 },
    pack: { ceiling_frac: 1, floor_frac: 0 },
  };
}

/** One phase of 230 V. */
export function socketOf(current_A: number, changes: Partial<Supply> = {}): Supply {
  return { name: "Supply", kind: "singlePhase", mode: "mode3", voltage_V: 230, current_A, ...changes };
}

/** A bare car's pack charged at a supply, from a state of charge on. */
export function charged(changes: Changes, supply: Supply, from_frac: number, within_s?: number): Charge {
  const job = bareJob(changes);
  const setting = chargeSetting(job, preparePack(job.packs[0], job.module), supply);
  return chargePack(setting, from_frac, setting.start_K, within_s);
}

import type { PackModel } from "../../battery/packModel.ts";
import { terminalCurrent_A } from "../../battery/terminalCurrent.ts";
import { derating_frac } from "../../math/heatLump.ts";
import { share } from "../../math/share.ts";
import { lookUp } from "../../math/uniformTable.ts";
import type { Feed } from "./chargerFeed.ts";

/** What of a charge does not change while it goes on. */
export interface ChargeSetting {
  readonly pack: PackModel;
  readonly feed: Pick<Feed, "power_W" | "current_A" | "wall_W">;
  /** Voltage that is held at the end. */
  readonly set_V: number;
  /** Current at which it then ends. */
  readonly tail_A: number;
  /** What the car takes at the pack's terminals meanwhile. */
  readonly carDraw_W: number;
  readonly ambient_K: number;
}

/** The current into a pack at one charge and temperature, and what goes with it. */
export interface ChargePoint {
  readonly current_A: number;
  readonly openCircuit_V: number;
  readonly terminal_V: number;
  /** Of the modules without leads, over all that the current passes. */
  readonly cellsShare_frac: number;
  /** What the set voltage alone would let pass; below nothing where the cells are above it. */
  readonly held_A: number;
  /** What holds the current back: the charger's power or current, the cells at their temperature, or the set voltage. */
  readonly limit: "power" | "current" | "cells" | "voltage";
}

/**
 * Current into the pack, in amperes: the least of what the charger's power and current leave after the car's own draw, what the cells
 * take at their temperature (none at and below the cold limit), and what brings the terminals to the set voltage:
 *
 *   I = (V_set − V_oc) / R      (constant voltage; Kirchhoff)
 */
export function chargePoint(setting: ChargeSetting, soc_frac: number, temperature_K: number): ChargePoint {
  const { pack, feed, set_V, carDraw_W } = setting;
  const openCircuit_V = lookUp(pack.openCircuit_V, soc_frac);
  const cells_ohm =
    lookUp(pack.resistance_ohm, soc_frac) * lookUp(pack.resistance_ratio, temperature_K) * pack.charging_ratio;
  const resistance_ohm = cells_ohm + pack.leads_ohm;
  const byPower_A = -terminalCurrent_A(-Math.max(0, feed.power_W - carDraw_W), openCircuit_V, resistance_ohm);
  const byCurrent_A = feed.current_A - carDraw_W / openCircuit_V;
  const cold_frac = share(temperature_K, pack.coldChargeNone_K, pack.coldChargeFull_K);
  const byCells_A = derating_frac(pack.heat, temperature_K) * cold_frac * pack.charge.continuous_A;
  const byVoltage_A = (set_V - openCircuit_V) / resistance_ohm;
  const least_A = Math.min(byPower_A, byCurrent_A, byCells_A, byVoltage_A);
  const current_A = Math.max(0, least_A);
  return {
    current_A,
    openCircuit_V,
    terminal_V: openCircuit_V + current_A * resistance_ohm,
    cellsShare_frac: cells_ohm / resistance_ohm,
    held_A: byVoltage_A,
    limit:
      least_A === byVoltage_A
        ? "voltage"
        : least_A === byCells_A
          ? "cells"
          : least_A === byCurrent_A
            ? "current"
            : "power",
  };
}

import type { Charger } from "../../../shared/job/schema/charger.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { W_PER_KW } from "../../../shared/units.ts";
import { greatestWhere } from "../../math/halving.ts";
import { straightAt } from "../../math/straightAt.ts";

/** What a charger gives at one supply. Powers and currents at its DC side, the car's own draw not yet taken off. */
export interface Feed {
  /** Most that the supply gives it, in watts of alternating current. */
  readonly supply_W: number;
  /** Most that it gives on. */
  readonly power_W: number;
  readonly current_A: number;
  /** What sets that power: the supply with the charger's own current limit on it, or the charger. */
  readonly limit: "supply" | "charger";
  /** Taken from the wall while so many watts are given. */
  readonly wall_W: (given_W: number) => number;
}

/**
 * What a charger gives at a supply: volts x amps x phases, times its efficiency, and no more than its own power. Three phases count
 * only for a charger that takes them: one of a single phase has a third.
 */
export function chargerFeed(supply: Supply, charger: Charger): Feed {
  const phases = supply.kind === "threePhase" && charger.isThreePhase === true ? 3 : 1;
  const each_A = Math.min(supply.current_A, charger.maxAc_A ?? Number.POSITIVE_INFINITY);
  const supply_W = phases * supply.voltage_V * each_A;
  const own_W = (charger.power_kW ?? Number.POSITIVE_INFINITY) * W_PER_KW;
  const fromSupply_W = given_W(charger, supply_W);
  return {
    supply_W,
    power_W: Math.min(own_W, fromSupply_W),
    current_A: charger.maxDc_A ?? Number.POSITIVE_INFINITY,
    limit: own_W <= fromSupply_W ? "charger" : "supply",
    wall_W: (given) => given / efficiency_frac(charger, given),
  };
}

/** Efficiency at a power given, straight between the points of the charger's table and level beyond them; else its one figure. */
function efficiency_frac({ efficiencyByLoad, efficiency_frac: flat_frac, power_kW }: Charger, given_W: number): number {
  if (!efficiencyByLoad || power_kW === undefined) return flat_frac;
  const { load_frac, efficiency_frac } = efficiencyByLoad;
  return straightAt(load_frac, efficiency_frac, given_W / (power_kW * W_PER_KW));
}

/** Most that is given while the wall gives `wall_W`. What is taken rises with what is given (its schema sees to that), so halving finds it. */
function given_W(charger: Charger, wall_W: number): number {
  if (!charger.efficiencyByLoad) return wall_W * charger.efficiency_frac;
  return greatestWhere(0, wall_W, (given) => given === 0 || given / efficiency_frac(charger, given) <= wall_W);
}

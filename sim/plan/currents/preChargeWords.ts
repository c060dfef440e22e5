import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { CLOSE_frac } from "./preCharge.ts";
import type { PreChargeChoice, ShelfRow } from "./preChargeShelf.ts";

/** What the pre-charge does, or that it never gets there and what to do. */
export function preChargeWords(choice: PreChargeChoice): Message {
  const { chosen, withoutLoad, load_W, capacitance_uF, isCapacitanceAssumed, rows } = choice;
  const close = q("fraction", CLOSE_frac);
  const of = isCapacitanceAssumed
    ? message`${q("capacitance", capacitance_uF)} (assumed: see the controller's sheet)`
    : message`${q("capacitance", capacitance_uF)}`;
  if (chosen?.time_s === undefined) {
    const tried = chosen ?? rows[0];
    const alone = withoutLoad ? message`: ${works(withoutLoad)}` : message``;
    return message`Pre-charge of ${of}: with ${q("accessoryPower", load_W)} drawn on the controller's side ${ohms(tried)} settles at ${q("fraction", tried.settles_frac, 2)}, below ${close}, and never gets there${chosen ? "" : "; no larger value does better"}. Wire that load before the contactor, or let it wake after it${alone}.`;
  }
  const beside = load_W > 0 ? message`, with ${q("accessoryPower", load_W)} drawn meanwhile` : message``;
  return message`Pre-charge of ${of}: ${works(chosen)}${beside}. Never without the resistor: a contactor that closes on empty capacitors welds. A short circuit behind it lays all of ${q("accessoryPower", chosen.peak_W, 2)} on it, so that it must be given up in time.`;
}

function works(row: ShelfRow): Message {
  return message`${ohms(row)} takes ${(row.time_s ?? 0).toPrecision(2)} s to ${q("fraction", CLOSE_frac)}, ${joules(row.energy_J)} J turned to heat in it and ${q("accessoryPower", row.peak_W, 2)} at the first moment; wire-wound, ${row.rating_W} W or more with a maker's pulse curve above that`;
}

function ohms({ resistance_ohm }: ShelfRow): Message {
  return message`${q("resistor", resistance_ohm)}`;
}

function joules(energy_J: number): string {
  return energy_J >= 100 ? `${Math.round(energy_J)}` : energy_J.toPrecision(2);
}

import type { LedgerWh } from "../../../../sim/index.ts";
import { ledgerFills } from "./inks.ts";

export type LedgerEntry = Exclude<keyof LedgerWh, "total">;

/** Names of the ledger's entries, from the air to the brakes. */
export const ledgerNames: Readonly<Record<LedgerEntry, string>> = {
  aero: "air",
  rolling: "rolling",
  climb: "climbing",
  speed: "speed gained",
  driveline: "driveline",
  motor: "motor and controller",
  packHeat: "heat in the pack",
  accessories: "accessories",
  frictionBrake: "friction brakes",
};
export const ledgerEntries = Object.keys(ledgerFills) as LedgerEntry[];

/** One entry in a stacked bar, in the unit shown. */
export interface Segment {
  readonly entry: LedgerEntry;
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** One pack's entries end to end: gains to the right of zero, what is given back to the left. */
export function stacked(size: (entry: LedgerEntry) => number): Segment[] {
  let above = 0;
  let below = 0;
  return ledgerEntries.map((entry) => {
    const value = size(entry);
    const from = value < 0 ? below : above;
    const to = from + value;
    if (value < 0) below = to;
    else above = to;
    return { entry, value, from, to };
  });
}

/** Ends of entries that lie on the same side of zero in two bars, one above the other. */
export function alike(bar: readonly Segment[], barAbove: readonly Segment[]): { above: number; below: number }[] {
  return bar.flatMap((each, k) => {
    const upper = barAbove[k];
    return upper && upper.value * each.value > 0 ? [{ above: upper.to, below: each.to }] : [];
  });
}

/** Where a piece of a bar has its middle. */
export function middle(each: Segment): number {
  return (each.from + each.to) / 2;
}

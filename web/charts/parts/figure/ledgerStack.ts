import type { LedgerWh } from "../../../../sim/index.ts";
import { ledgerFills } from "./inks.ts";

/**
 * Where the energy goes that leaves the pack's terminals, the boundary of every energy on the page; the pack's own heat is lost
 * before them.
 */
export type LedgerEntry = Exclude<keyof LedgerWh, "total" | "packHeat">;

/** What left the terminals over a drive, in Wh: the sum of the entries. */
export function fromPack_Wh({ total, packHeat }: LedgerWh): number {
  return total - packHeat;
}

/** Names of the entries, from the air to the brakes. */
export const ledgerNames: Readonly<Record<LedgerEntry, string>> = {
  aero: "air",
  rolling: "rolling",
  climb: "climbing",
  speed: "speed gained",
  driveline: "driveline",
  motor: "motor and controller",
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

/** Where a piece of a bar has its middle. */
export function middle(each: Segment): number {
  return (each.from + each.to) / 2;
}

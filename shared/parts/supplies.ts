import * as z from "zod";
import { above0, line } from "../job/number.ts";
import { asDescribed, type PartOrigin, practice, published } from "./origin.ts";
import { partOf } from "./part.ts";

/** Where the lead goes in: what it gives, and what must be said with it. */
export const Supply = z.strictObject({
  name: line,
  kind: z.enum(["household", "mode3"]),
  /** Of one phase against neutral (or between the two hot wires of a split phase). */
  voltage_V: above0(1000),
  /** Of each phase, for hours. */
  current_A: above0(200),
  phases: z.union([z.literal(1), z.literal(3)]),
  cautions: z.array(z.string().min(1).max(300)).max(10),
});
export type Supply = z.infer<typeof Supply>;

export const SupplyPart = partOf(Supply);
export type SupplyPart = z.infer<typeof SupplyPart>;

const localRule = "Local codes and a licensed electrician come first; these are usual figures, not permission.";
const socketHeats = "A household socket is not made for hours at full current: old contacts and wiring heat.";
const ownCircuit = "Needs a circuit of its own with its own protection.";
const continuous = "[NEC2017, 625.41]";

const household = (current: PartOrigin) => ({ voltage_V: practice(207, 253), current_A: current });

/** Supplies at home and out of doors, from small to large. */
export const supplies: readonly SupplyPart[] = [
  supply(
    { name: "Household socket, 8 A", kind: "household", voltage_V: 230, current_A: 8, phases: 1 },
    [socketHeats, "The careful setting for an old or unknown socket.", localRule],
    household(practice(6, 8)),
  ),
  supply(
    { name: "Household socket, 10 A", kind: "household", voltage_V: 230, current_A: 10, phases: 1 },
    [socketHeats, "Feel plug and socket after an hour; warm is a reason to stop and ask.", localRule],
    household(practice(8, 13)),
  ),
  supply(
    { name: "Household socket, 120 V, 15 A circuit", kind: "household", voltage_V: 120, current_A: 12, phases: 1 },
    [socketHeats, "A load of hours may take four fifths of the breaker: 12 A of 15 A.", localRule],
    { voltage_V: practice(108, 132), current_A: published(continuous, 8, 12) },
  ),
  supply(
    { name: "Wall unit, 16 A, mode 3", kind: "mode3", voltage_V: 230, current_A: 16, phases: 1 },
    [ownCircuit, localRule],
    { voltage_V: practice(207, 253), current_A: published("[IEC62196-2, type 2]", 6, 16) },
  ),
  supply(
    { name: "Wall unit, 32 A, mode 3", kind: "mode3", voltage_V: 230, current_A: 32, phases: 1 },
    [ownCircuit, "The house's main fuse must stand it beside everything else.", localRule],
    { voltage_V: practice(207, 253), current_A: published("[IEC62196-2, type 2]", 6, 32) },
  ),
  supply(
    { name: "Wall unit, 240 V, 40 A circuit, mode 3", kind: "mode3", voltage_V: 240, current_A: 32, phases: 1 },
    [ownCircuit, "A load of hours may take four fifths of the breaker: 32 A of 40 A.", localRule],
    { voltage_V: practice(216, 252), current_A: published(continuous, 6, 32) },
  ),
  supply(
    { name: "Wall unit, 16 A on three phases, mode 3", kind: "mode3", voltage_V: 230, current_A: 16, phases: 3 },
    [ownCircuit, "A charger of one phase takes only a third of it.", localRule],
    { voltage_V: practice(207, 253), current_A: published("[IEC62196-2, type 2]", 6, 16) },
  ),
];

function supply(
  figures: Omit<Supply, "cautions">,
  cautions: string[],
  origins: { voltage_V: PartOrigin; current_A: PartOrigin },
): SupplyPart {
  const id = figures.name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replace(/-$/, "");
  return { id, title: figures.name, data: { ...figures, cautions }, origins: { ...origins, phases: asDescribed() } };
}

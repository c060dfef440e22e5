import type * as z from "zod";
import { Supply } from "../job/schema/supply.ts";
import { practice, published } from "./origin.ts";
import { partOf } from "./part.ts";
import type { PartOrigin } from "./partOrigin.ts";

export const SupplyPart = partOf(Supply);
export type SupplyPart = z.infer<typeof SupplyPart>;

const continuous = "[NEC2017, 625.41]";
const type2 = "[IEC62196-2, type 2]";
const mains = practice(207, 253);

/** Supplies at home and out of doors, from small to large. What to heed at each is said where its hours are. */
export const supplies: readonly SupplyPart[] = [
  supply("Household socket, 8 A", "household", "mode2", 230, 8, mains, practice(6, 8)),
  supply("Household socket, 10 A", "household", "mode2", 230, 10, mains, practice(8, 13)),
  supply("Household socket, 13 A", "household", "mode2", 230, 13, mains, practice(10, 13)),
  supply(
    "Household socket, 120 V, 15 A circuit",
    "household",
    "mode2",
    120,
    12,
    practice(108, 132),
    published(continuous, 8, 12),
  ),
  supply("Wall unit, 16 A, mode 3", "singlePhase", "mode3", 230, 16, mains, published(type2, 6, 16)),
  supply("Wall unit, 32 A, mode 3", "singlePhase", "mode3", 230, 32, mains, published(type2, 6, 32)),
  supply(
    "Wall unit, 240 V, 40 A circuit, mode 3",
    "singlePhase",
    "mode3",
    240,
    32,
    practice(216, 252),
    published(continuous, 6, 32),
  ),
  supply("Wall unit, 16 A on three phases, mode 3", "threePhase", "mode3", 230, 16, mains, published(type2, 6, 16)),
  supply("Wall unit, 32 A on three phases, mode 3", "threePhase", "mode3", 230, 32, mains, published(type2, 6, 32)),
];

function supply(
  name: string,
  kind: Supply["kind"],
  mode: Supply["mode"],
  voltage_V: number,
  current_A: number,
  voltage: PartOrigin,
  current: PartOrigin,
): SupplyPart {
  const id = name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replace(/-$/, "");
  return {
    id,
    title: name,
    data: { name, kind, mode, voltage_V, current_A },
    origins: { voltage_V: voltage, current_A: current },
  };
}

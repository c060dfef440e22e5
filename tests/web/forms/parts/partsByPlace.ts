import { bodies } from "../../../../shared/parts/bodies.ts";
import { chargers } from "../../../../shared/parts/chargers.ts";
import { modules } from "../../../../shared/parts/modules.ts";
import { motors } from "../../../../shared/parts/motors.ts";
import type { Part } from "../../../../shared/parts/part.ts";
import { tyres } from "../../../../shared/parts/tyres.ts";

/** The part of a list by its name; throws where it has none. */
export function partOf<Data>(parts: readonly Part<Data>[], id: string): Part<Data> {
  const part = parts.find((each) => each.id === id);
  if (!part) throw new Error(`no part ${id}`);
  return part;
}

/** Parts by the place in the job that they fill. */
export const groups: readonly [string, readonly Part<unknown>[]][] = [
  ["motor", motors],
  ["module", modules],
  ["vehicle.roadLoad", bodies],
  ["vehicle.tyres", tyres],
  ["charger", chargers],
];

import { type CycleCharacteristics, type Likeness, standardCycleLike } from "../../route/roads/standardCycleLike.ts";
import { type Characteristics, characteristics } from "../../trace/characteristics.ts";
import { cycleIds } from "../../trace/standardCycles.ts";
import { cycleById } from "../cycleFiles.ts";

/** A function that names the standard cycle, or the phase of one, that a trip resembles most. Reads their tables once. */
export function likenessToCycles(): (trip: Characteristics) => Likeness {
  const cycles: readonly CycleCharacteristics[] = cycleIds.map((id) => ({
    id,
    characteristics: characteristics(cycleById(id)),
  }));
  return (trip) => standardCycleLike(trip, cycles)[0];
}

import type { Weights } from "../../../shared/job/schema/weights.ts";
import type { AxleLoads } from "../../vehicle/axleLoads.ts";
import { converted, type Over, overloads, put } from "./weigh.ts";

/** How a pack may be divided between the foremost and the rearmost box, fully laden, so that every plate is met. */
export interface PackSplit {
  readonly front: string;
  readonly rear: string;
  /** Share of the pack in the foremost box, from and to; absent where no split meets every plate. */
  readonly low_frac?: number;
  readonly high_frac?: number;
  /** Where none does: the split that is least over, and what it is over. */
  readonly best_frac?: number;
  readonly over: readonly Over[];
}

/**
 * The shares of a pack of `pack_kg` that may sit in the foremost box, the rest in the rearmost one, with the car fully laden (and towing,
 * where it tows). Each axle load is a straight line in the share, so each plate bounds it from one side. Nothing with a single box.
 */
export function packSplit(weights: Weights, pack_kg: number): PackSplit | undefined {
  const { boxes, plates } = weights;
  const ordered = [...boxes].sort((a, b) => a.place_mm - b.place_mm);
  const front = ordered[0];
  const rear = ordered[ordered.length - 1];
  if (front.place_mm === rear.place_mm) return undefined;
  const at = (share_frac: number): AxleLoads =>
    put(
      put(ladenWithoutPack(weights), weights, pack_kg * share_frac, front.place_mm),
      weights,
      pack_kg * (1 - share_frac),
      rear.place_mm,
    );
  const [none, all] = [at(0), at(1)];
  const names = { front: front.name, rear: rear.name };
  // More in front loads the front axle and relieves the rear one.
  const mostFront_kg = Math.min(plates.front_kg ?? Infinity, plates.frontTyres_kg ?? Infinity);
  const mostRear_kg = Math.min(plates.rear_kg ?? Infinity, plates.rearTyres_kg ?? Infinity);
  const high_frac = (mostFront_kg - none.front_kg) / (all.front_kg - none.front_kg);
  const low_frac = (none.rear_kg - mostRear_kg) / (none.rear_kg - all.rear_kg);
  const isGrossMet = none.front_kg + none.rear_kg <= (plates.gross_kg ?? Infinity);
  const from = Math.max(0, low_frac);
  const to = Math.min(1, high_frac);
  if (isGrossMet && from <= to) return { ...names, low_frac: from, high_frac: to, over: [] };
  // Over both: as much over the one as over the other; over one: as far from it as may be.
  const best_frac = Math.min(1, Math.max(0, low_frac > high_frac ? 0.5 * (low_frac + high_frac) : low_frac));
  return { ...names, best_frac, over: overloads(at(best_frac), weights) };
}

function ladenWithoutPack(weights: Weights): AxleLoads {
  const { driver, load, ball } = weights;
  const aboard = [...(driver ? [driver] : []), ...load, ...(ball ? [ball] : [])];
  return aboard.reduce((at, { mass_kg, place_mm }) => put(at, weights, mass_kg, place_mm), converted(weights));
}

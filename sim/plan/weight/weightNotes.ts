import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { converted, overloads } from "./weigh.ts";

/** Lists and sums may differ by so much before it is said. Assumed. */
const AGREE_kg = 5;

/** What a person must know of the weights: lists that do not sum to what the job drives with, and masses that lighten the steering. */
export function weightNotes(job: Job, weights: Weights): string[] {
  const notes: string[] = [];
  const sum = (items: readonly { readonly mass_kg: number }[]) =>
    items.reduce((total, { mass_kg }) => total + mass_kg, 0);
  const { removed_kg, added_kg } = job.vehicle;
  const lists = [
    ["comes out", sum(weights.out), removed_kg],
    ["goes in", sum(weights.in), added_kg],
  ] as const;
  for (const [what, listed_kg, driven_kg] of lists) {
    if (Math.abs(listed_kg - driven_kg) > AGREE_kg)
      notes.push(
        `What ${what} sums to ${n(listed_kg, 4)} kg here, and the car is driven with ${n(driven_kg, 4)} kg: one of the two is out of date.`,
      );
  }
  for (const { name, place_mm, share_frac } of weights.boxes) {
    if (place_mm > weights.wheelbase_mm && share_frac > 0)
      notes.push(
        `${name} sits behind the rear axle: what is in it takes weight off the front wheels and lightens the steering.`,
      );
  }
  for (const { what, by_kg } of overloads(converted(weights), weights))
    notes.push(`Without any pack the car is already ${n(by_kg, 2)} kg over its limit (${what}): check the plate.`);
  return notes;
}

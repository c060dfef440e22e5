import type { Job } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { knownField, labelOf } from "../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../editing/fieldTable/writeAtPath.ts";

const order = ["guessed", "typed", "usual", "handbook", "measured"];
const words: Readonly<Record<string, string>> = { usual: "usual value" };

/** Every number of a job that has an origin: its words, value, how far it may be off, and where it is from; the least certain first. */
export function assumptionsOf(job: Job, units: UnitHabit): readonly (readonly string[])[] {
  return Object.entries(job.origins)
    .flatMap(([path, { from, plusMinus_frac }]) => {
      const value = atPath(job, path);
      if (typeof value !== "number" || !knownField(path)) return [];
      const band = plusMinus_frac === undefined ? "" : `± ${writeQuantity("fraction", plusMinus_frac, units, 2)}`;
      return [{ from, cells: [labelOf(path), writeAtPath(path, value, units), band, words[from] ?? from] }];
    })
    .toSorted((a, b) => order.indexOf(a.from) - order.indexOf(b.from))
    .map(({ cells }) => cells);
}

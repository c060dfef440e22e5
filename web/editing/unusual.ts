import type { Job } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { type Field, fieldList } from "./fieldTable/fieldList.ts";
import { placesOf } from "./fieldTable/placesOf.ts";

/** A value that the job takes and that hardly any car has. */
export interface Unusual {
  readonly path: string;
  readonly label: string;
  /** `0 m² is unusual: a car has 1.2 to 5 m²` */
  readonly message: string;
}

/** What is odd about a field's value; nothing where it is usual, or where its owner has said that it is right. */
export function unusualAt(job: Job, path: string, field: Field, units: UnitHabit): string | undefined {
  if (field.type !== "quantity" || !field.likely || job.origins[path]?.isConfirmed === true) return undefined;
  const value = atPath(job, path);
  const { min, max, of } = field.likely;
  if (typeof value !== "number" || (value >= min && value <= max)) return undefined;
  const write = (number: number) => writeQuantity(field.kind, number, units);
  // Miles to the gallon fall as litres rise.
  const [low, high] = [write(min), write(max)].sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b));
  return `${write(value)} is unusual: ${of} has ${low.replace(/ \D+$/, "")} to ${high}`;
}

/** All values of a job beyond their soft limits, in the order of the fields. */
export function unusualFields(job: Job, units: UnitHabit): Unusual[] {
  return Object.entries(fieldList).flatMap(([pattern, field]) => {
    if (field.type !== "quantity" || !field.likely) return [];
    return placesOf(job, pattern).flatMap((path) => {
      const message = unusualAt(job, path, field, units);
      return message === undefined ? [] : [{ path, label: field.label, message }];
    });
  });
}

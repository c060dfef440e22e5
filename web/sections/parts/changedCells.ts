import type { Job } from "../../../shared/job/job.ts";
import { atPath } from "../../../shared/job/path.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Beside } from "../../../sim/index.ts";
import { labelOf } from "../../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../../editing/fieldTable/writeAtPath.ts";

/** More would bury the figures above; the rest is counted. */
const SHOWN = 20;

/** What a prediction was made from and is another value now, by the words of its field. Where a value comes from is written apart. */
export function changedCells({ prediction, changed }: Beside, job: Job, units: UnitHabit): string[][] {
  const values = changed.filter((path) => !path.startsWith("origins."));
  const rows = values
    .slice(0, SHOWN)
    .map((path) => [
      labelOf(path),
      written(path, atPath(prediction.state, path), units),
      written(path, atPath(job, path), units),
    ]);
  const more = values.length - rows.length;
  const origins = changed.length - values.length;
  return [
    ...rows,
    ...(more > 0 ? [[`${more} more values`, "", "other values"]] : []),
    ...(origins > 0
      ? [[`Where ${origins === 1 ? "a value comes" : `${origins} values come`} from`, "", "said anew"]]
      : []),
  ];
}

function written(path: string, value: unknown, units: UnitHabit): string {
  if (value === undefined) return "none";
  if (typeof value === "number") return writeAtPath(path, value, units);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return value.length > 60 ? `${value.slice(0, 59)}…` : value;
  return Array.isArray(value) ? `a list of ${value.length}` : "a group of values";
}

import { inputError } from "../../../shared/problems.ts";
import { S_PER_DAY } from "../../../shared/units.ts";
import { hasValues } from "../log/fixes.ts";
import type { Segment } from "./gaps/findGaps.ts";
import type { CleanInput } from "./report/cleanedLog.ts";
import type { RowColumns } from "./rows/rowColumns.ts";

/** Segments at one row a second must fit into memory: a month and a half of unbroken logging does. */
const LONGEST_s = 4e6;

/** Throws `InputError` where the log has no times: nothing in it says when anything was. */
export function checkTimes({ fixes, file }: CleanInput): void {
  if (!hasValues(fixes.time_s)) {
    throw inputError("noTimes", file, "found positions without times: a planned route; type the speeds to drive it at");
  }
}

/** Throws `InputError` where no position and no speed is left of the log. */
export function checkUsable(log: CleanInput, rows: RowColumns): void {
  if (hasValues(rows.latitude_deg) || hasValues(rows.speed_mps)) {
    return;
  }
  const hadPositions = hasValues(log.fixes.latitude_deg);
  const message = hadPositions
    ? "found every position at 0,0 or out of reach of the others: the receiver never had a lock"
    : "found neither positions nor speeds";
  throw inputError("noUsablePosition", log.file, `${message}, wanted a drive`);
}

/** Throws `InputError` where the segments together are longer than can be cleaned at once. */
export function checkLength(log: CleanInput, rows: RowColumns, segments: readonly Segment[]): void {
  const length_s = segments.reduce((sum, one) => sum + rows.time_s[one.to - 1] - rows.time_s[one.from], 0);
  if (length_s > LONGEST_s) {
    const days = (length_s / S_PER_DAY).toFixed(0);
    throw inputError("tooLong", log.file, `found ${days} days of logging, at most 46 are cleaned at once: cut the log`);
  }
}

import * as z from "zod";
import { across, type Fault } from "./across.ts";

// No code is compiled from strings: the page runs under a policy without unsafe-eval.
z.config({ jitless: true });

/** A number with both bounds, wide enough for an odd but real vehicle. */
export function between(low: number, high: number) {
  return z.number().min(low).max(high);
}

/** A number above zero and at most `high`: for what cannot be nothing, such as a mass. */
export function above0(high: number) {
  return z.number().gt(0).max(high);
}

/** A list of numbers that rises strictly: an axis of a table. */
export function risingAxis(low: number, high: number, least = 2, most = 2000) {
  return z
    .array(between(low, high))
    .min(least)
    .max(most)
    .check(across([], (values, fault) => checkRise(values, "", fault)));
}

/** Says the first entry that does not lie above the one before it; entries that are no numbers are faults of their own. */
export function checkRise(values: readonly number[], unit: string, fault: Fault, path: readonly string[] = []): void {
  const isNumber = (value: unknown) => typeof value === "number";
  const i = values.findIndex(
    (value, k) => isNumber(value) && isNumber(values[k - 1]) && value <= (values[k - 1] ?? value),
  );
  if (i < 0) return;
  const name = unit === "" ? "values" : unit === " s" ? "times" : "speeds";
  fault([...path, i], `found ${values[i]}${unit} after ${values[i - 1]}${unit}, ${name} must rise`);
}

/** A short text of one line. */
export const line = z.string().trim().min(1).max(200);

/** Says of a list that is not as long as its axis what its length is and should be. */
export function lengthMessage(found: number, wanted: number, of: string): string {
  return `found ${found} ${found === 1 ? "value" : "values"}, ${wanted} wanted: one for each of ${of}`;
}

/** The check that one list of a group is as long as another. */
export function sameLength<Key extends string, Axis extends string>(key: Key, axis: Axis) {
  return across<Readonly<Record<Key | Axis, readonly unknown[]>>>([key, axis], (group, fault) => {
    const found = group[key].length;
    const wanted = group[axis].length;
    if (found !== wanted) fault([key], lengthMessage(found, wanted, axis));
  });
}

import * as z from "zod";

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
export function risingAxis(low: number, high: number, least = 2) {
  return z
    .array(between(low, high))
    .min(least)
    .max(2000)
    .check((ctx) => {
      const fault = ctx.value.findIndex((value, i) => i > 0 && value <= (ctx.value[i - 1] ?? Number.NEGATIVE_INFINITY));
      if (fault > 0) {
        ctx.issues.push({
          code: "custom",
          input: ctx.value,
          path: [fault],
          message: `found ${ctx.value[fault]} after ${ctx.value[fault - 1]}, values must rise`,
        });
      }
    });
}

/** A short text of one line. */
export const line = z.string().trim().min(1).max(200);

/** Says on `path` that a table's row or column count is not its axis' length. */
export function lengthMessage(found: number, wanted: number, of: string): string {
  return `found ${found} values, ${wanted} wanted: one for each of ${of}`;
}

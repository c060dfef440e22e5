import * as z from "zod";
import { isAtOrBelow, numbersIn } from "../job/path.ts";
import { line } from "../job/schema/number.ts";
import { PartOrigin } from "./partOrigin.ts";

/** One generic part: `data` is what a job takes as it is, `origins` says of every number in it where it comes from. */
export interface Part<Data> {
  readonly id: string;
  readonly title: string;
  readonly data: Data;
  /** By path inside `data`, such as `envelope.power_kW`. A path speaks for all numbers below it. */
  readonly origins: Readonly<Record<string, PartOrigin>>;
}

/**
 * The schema of a part around the schema of its data. Beyond the shapes it holds that every number in the data has an
 * origin, that every origin belongs to something in the data, and that a single value lies in its own band.
 */
export function partOf<Data extends z.ZodType>(data: Data) {
  return z
    .strictObject({
      id: z.string().regex(/^[a-z][a-z0-9-]*$/),
      title: line,
      data,
      origins: z.record(z.string().max(200), PartOrigin),
    })
    .check((ctx) => {
      const fault = (path: string[], message: string) => {
        ctx.issues.push({ code: "custom", input: ctx.value, path, message });
      };
      const part: { data?: unknown; origins: Record<string, PartOrigin> } = ctx.value;
      const numbers = numbersIn(part.data);
      const origins = Object.entries(part.origins);
      for (const { path } of numbers) {
        if (!origins.some(([prefix]) => isAtOrBelow(path, prefix))) {
          fault(["data", ...path.split(".")], "found a value without an origin");
        }
      }
      for (const [prefix, { low, high, plusMinus_frac }] of origins) {
        const spokenFor = numbers.filter(({ path }) => isAtOrBelow(path, prefix));
        if (spokenFor.length === 0) fault(["origins", prefix], "found an origin of a value that is not there");
        const isTable = spokenFor.length > 1;
        if (isTable && low !== undefined) fault(["origins", prefix], "found a band for a table, plusMinus_frac wanted");
        if (!isTable && plusMinus_frac !== undefined) {
          fault(["origins", prefix], "found plusMinus_frac for a single value, low and high wanted");
        }
        for (const { value } of spokenFor) {
          if (low !== undefined && high !== undefined && (value < low || value > high)) {
            fault(["origins", prefix], `found a band from ${low} to ${high} that leaves out the value ${value}`);
          }
        }
      }
    });
}

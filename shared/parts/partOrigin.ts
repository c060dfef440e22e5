import * as z from "zod";
import { line } from "../job/schema/number.ts";

/** Where one value of a generic part comes from, and how far it may be off. */
export const PartOrigin = z
  .strictObject({
    origin: z.enum(["published law", "derived from published figures", "common practice, no source", "invented"]),
    /** Key and place of a published law, as in the list of references. */
    citation: line.optional(),
    /** The band of a single value, in the value's own unit; the value itself is the usual one. */
    low: z.number().optional(),
    high: z.number().optional(),
    /** The band of a curve or a table: every entry may be off by this share. */
    plusMinus_frac: z.number().min(0).max(2).optional(),
    note: z.string().max(300).optional(),
  })
  .check((ctx) => {
    const { origin, citation, low, high } = ctx.value;
    const fault = (path: string, message: string) => {
      ctx.issues.push({ code: "custom", input: ctx.value, path: [path], message });
    };
    const isPublished = origin === "published law" || origin === "derived from published figures";
    if (isPublished && citation === undefined) fault("citation", "a published figure needs its source");
    if ((low === undefined) !== (high === undefined)) fault("low", "found one end of a band, both wanted");
    if (low !== undefined && high !== undefined && low > high) fault("low", `found ${low}, at most ${high} allowed`);
  });
export type PartOrigin = z.infer<typeof PartOrigin>;

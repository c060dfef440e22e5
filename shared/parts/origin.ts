import * as z from "zod";
import { line } from "../job/number.ts";

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

/** A value that somebody made up for this list, plausible between `low` and `high`. */
export function invented(low: number, high: number, note?: string): PartOrigin {
  return { origin: "invented", low, high, ...noteOf(note) };
}

/** A value that workshops commonly use, without a source to point at. */
export function practice(low: number, high: number, note?: string): PartOrigin {
  return { origin: "common practice, no source", low, high, ...noteOf(note) };
}

/** A value printed in a named source. `citation` is a key of the list of references and the place in it. */
export function published(citation: string, low: number, high: number, note?: string): PartOrigin {
  return { origin: "published law", citation, low, high, ...noteOf(note) };
}

/** A value worked out here from figures printed in a named source, by a rule that stands beside it. */
export function derived(citation: string, low: number, high: number, note?: string): PartOrigin {
  return { origin: "derived from published figures", citation, low, high, ...noteOf(note) };
}

/** A made-up curve or table, each entry good to a share of itself. */
export function inventedCurve(plusMinus_frac: number, note?: string): PartOrigin {
  return { origin: "invented", plusMinus_frac, ...noteOf(note) };
}

/** A curve or table computed from a published equation, each entry good to a share of itself for another make. */
export function publishedCurve(citation: string, plusMinus_frac: number, note?: string): PartOrigin {
  return { origin: "published law", citation, plusMinus_frac, ...noteOf(note) };
}

/** A count or size that is part of what the part is: no band. */
export function asDescribed(note?: string): PartOrigin {
  return { origin: "invented", ...noteOf(note) };
}

function noteOf(note: string | undefined): { note?: string } {
  return note === undefined ? {} : { note };
}

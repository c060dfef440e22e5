import type { PartOrigin } from "./partOrigin.ts";

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

import type { PartOrigin } from "../../shared/parts/partOrigin.ts";

/** Where a generic part's value comes from: `published law (Wong2008, ch. 1), from memory`, `invented`. */
export function originInWords({ origin, citation, note }: PartOrigin): string {
  const source = citation === undefined ? origin : `${origin} (${citation.replace(/^\[|\]$/g, "")})`;
  return note === undefined ? source : `${source}: ${note}`;
}

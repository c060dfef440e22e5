import { greys, highlight } from "../../../look/tokens.ts";

/** How one pack is drawn on the whole page, so that it is known without its colour too. */
export interface PackStyle {
  readonly colour: string;
  /** stroke-dasharray; none for a whole line. */
  readonly dash: string | undefined;
  readonly symbol: (typeof symbols)[number];
  readonly width_px: number;
}

// Three greys, five dashes, seven marks have no common factor: no two of the first 105 packs look alike.
const dashes = ["8 3", "2 3", "10 3 2 3", "5 2 1 2 1 2", "1 3"] as const;
const symbols = ["circle", "square", "triangle", "diamond", "star", "cross", "wye"] as const;

/** Look of the pack at `index` in the job's list: the chosen one in the highlight and whole, the others grey and dashed. */
export function packStyle(index: number, chosen?: number): PackStyle {
  const symbol = symbols[index % symbols.length] ?? "circle";
  if (index === chosen) return { colour: highlight, dash: undefined, symbol, width_px: 2.4 };
  return {
    colour: greys[index % greys.length] ?? highlight,
    dash: dashes[index % dashes.length],
    symbol,
    width_px: 1.5,
  };
}

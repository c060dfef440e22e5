import { figureColours } from "../../../look/tokens.ts";

/** How one pack is drawn on the whole page, so that it is known without its colour too. */
export interface PackStyle {
  readonly colour: string;
  /** stroke-dasharray; none for a whole line. */
  readonly dash: string | undefined;
  readonly symbol: (typeof symbols)[number];
}

// Six colours, five dashes, seven marks have no common factor: no two of the first 210 packs look alike.
const dashes = [undefined, "8 3", "2 3", "10 3 2 3", "5 2 1 2 1 2"] as const;
const symbols = ["circle", "square", "triangle", "diamond", "star", "cross", "wye"] as const;

/** Colour, dash and mark of the pack at `index` in the job's list; a pack keeps them in every figure. */
export function packStyle(index: number): PackStyle {
  return {
    colour: figureColours[index % figureColours.length] ?? "#000",
    dash: dashes[index % dashes.length],
    symbol: symbols[index % symbols.length] ?? "circle",
  };
}

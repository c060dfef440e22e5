import type { Drawing } from "../../charts/parts/figure/chart.ts";

/** What the figures that stand were drawn for. */
export type DrawnFor = Readonly<{ value: unknown; width_px: number; units: Drawing["units"] }>;

/**
 * Whether figures that were drawn for something else, or not at all, have to be drawn anew. A late value is of new things and of
 * old ones, and another comes at once: until then the figures stand as they are, marked late, unless the width or the units
 * they are wanted in have changed.
 */
export function isToDraw(drawnFor: DrawnFor | undefined, wanted: DrawnFor, isLate: boolean): boolean {
  if (drawnFor?.width_px !== wanted.width_px || drawnFor.units !== wanted.units) return true;
  return !isLate && !Object.is(drawnFor.value, wanted.value);
}

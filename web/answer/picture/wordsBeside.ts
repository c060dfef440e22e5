import type { RowFrame } from "./answerDrawing.ts";
import type { Ring } from "./drawEvenings.ts";

/** Between a band and its words, and at least between these and a ring. */
const BESIDE_px = 10;
const CLEAR_px = 3;
/** Words further from their band than this would not be read as its own. */
const FAR_px = 60;

/** Where the words of a band stand: at its left where there is room, else at its right, and clear of the rings at their height where a few pixels do it. */
export function wordsBeside(
  band: { readonly low: number; readonly high: number },
  width_px: number,
  rings: readonly Ring[],
  { left_px, right_px, toPixel }: Pick<RowFrame, "left_px" | "right_px" | "toPixel">,
): { x: number; isLeft: boolean } {
  const low_px = Math.max(left_px, toPixel(band.low)) - BESIDE_px;
  // A mark beyond the left edge is not seen, and its words stand at the edge.
  const high_px = Math.max(left_px - 6, toPixel(band.high)) + BESIDE_px;
  const taken = rings.map(({ x_px, r }) => [x_px - r - CLEAR_px, x_px + r + CLEAR_px] as const);
  let end_px = low_px;
  for (const [from, to] of taken.toSorted((a, b) => b[0] - a[0]))
    if (from < end_px && to > end_px - width_px) end_px = from;
  let start_px = high_px;
  for (const [from, to] of taken.toSorted((a, b) => a[1] - b[1]))
    if (to > start_px && from < start_px + width_px) start_px = to;
  const isLeft = low_px - width_px > left_px;
  if (low_px - end_px <= FAR_px && end_px - width_px > left_px) return { x: end_px, isLeft: true };
  if (start_px - high_px <= FAR_px && start_px + width_px < right_px) return { x: start_px, isLeft: false };
  return isLeft ? { x: low_px, isLeft } : { x: Math.min(right_px - width_px, high_px), isLeft };
}

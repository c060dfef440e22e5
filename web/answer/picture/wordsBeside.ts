import type { RowFrame } from "./answerDrawing.ts";
import type { Ring } from "./drawEvenings.ts";

/** Between a band and its words, and at least between these and a ring. */
const BESIDE_px = 10;
const CLEAR_px = 3;
/** Words further from their band than this would not be read as its own. */
const FAR_px = 60;

/** Where the words of a band stand: at its left where there is room, else at its right, and clear of the rings at their height where a few pixels do it. */
export function wordsBeside(
  { low, high }: { readonly low: number; readonly high: number },
  width_px: number,
  rings: readonly Ring[],
  { left_px, right_px, toPixel }: Pick<RowFrame, "left_px" | "right_px" | "toPixel">,
): { x: number; isLeft: boolean } {
  const low_px = Math.max(left_px, toPixel(low)) - BESIDE_px;
  const isLeft = low_px - width_px > left_px;
  const away = isLeft ? -1 : 1;
  // A mark beyond the left edge is not seen, and its words stand at the edge.
  const first_px = isLeft ? low_px : Math.min(right_px - width_px, Math.max(left_px - 6, toPixel(high)) + BESIDE_px);
  let x = first_px;
  for (const { x_px, r } of rings.toSorted((a, b) => away * (a.x_px - b.x_px))) {
    const into_px = away * (x_px - x);
    if (into_px > -r - CLEAR_px && into_px < width_px + r + CLEAR_px) x = x_px + away * (r + CLEAR_px);
  }
  const end_px = x + away * width_px;
  const isNear = Math.abs(x - first_px) <= FAR_px && end_px > left_px && end_px < right_px;
  return { x: isNear ? x : first_px, isLeft };
}

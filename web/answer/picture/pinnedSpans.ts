import * as look from "../../look/tokens.ts";
import type { AnswerDrawing, RowFrame } from "./answerDrawing.ts";
import { inReaders } from "./marks.ts";
import type { Draw } from "./svg.ts";

interface SpansAt {
  readonly y0: number;
  readonly space_px: number;
  readonly isChosen: boolean;
}

/** What was pinned: a thin grey span at the row's top for new, at its bottom for ten years in winter. */
export function pinnedSpans(
  pen: Draw,
  name: string,
  { pinned, pinnedWords, units }: AnswerDrawing,
  { y0, space_px, isChosen }: SpansAt,
  { toPixel, left_px, right_px }: RowFrame,
): SVGElement[] {
  const before = pinned?.get(name);
  if (!before) return [];
  const inside = (left: number) => Math.max(left_px, Math.min(right_px, toPixel(left)));
  const spans = (["new", "tenYearsWinter"] as const).flatMap((condition) => {
    const band = before[condition];
    if (!band) return [];
    const { low, high, value } = inReaders(band, units);
    const y_px = condition === "new" ? y0 + 5 : y0 + space_px - 6;
    const group = pen("g", { class: "pinned", stroke: look.pinned, "stroke-width": 1.5 });
    group.append(pen("line", { x1: inside(low), x2: inside(high), y1: y_px, y2: y_px }));
    for (const at of [low, high, value]) {
      group.append(pen("line", { x1: inside(at), x2: inside(at), y1: y_px - 3, y2: y_px + 3 }));
    }
    if (condition === "new" && isChosen && pinnedWords) {
      const x = Math.min(inside(high) + 8, right_px - 6.4 * pinnedWords.length);
      group.append(
        pen("text", { x, y: y_px + 5, stroke: "none", fill: look.inkSoft, "font-style": "italic" }, pinnedWords),
      );
    }
    return [group];
  });
  return spans;
}

import { inUnits } from "../../../shared/quantity/writeQuantity.ts";
import type { Answer } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type AnswerDrawing, LETTER_px, MARK_ratio, type RowFrame, type RowLine } from "./answerDrawing.ts";
import { labelPlace } from "./bandMarks.ts";
import { inReaders, type Mark, marksOf } from "./marks.ts";
import { type Draw, halo } from "./svg.ts";

/** The longest day, as a ring: new above the line, at ten years in winter below it; an arrow where it lies beyond the picture. */
export function rings(
  pen: Draw,
  answer: Answer,
  index: number,
  { units }: AnswerDrawing,
  { middle_px, space_px, isChosen }: RowLine,
  frame: RowFrame,
): SVGElement[] {
  const { toPixel, left_px, isNarrow } = frame;
  const { longest } = answer.packs[index];
  if (!longest || answer.longestDay_km === undefined || answer.longestDay_km <= answer.day_km) return [];
  const out: SVGElement[] = [];
  for (const condition of ["new", "tenYearsWinter"] as const) {
    const { value } = inReaders(longest[condition], units);
    const x_px = toPixel(value);
    const y_px = middle_px + (condition === "new" ? MARK_ratio.new : 0.36) * space_px;
    if (x_px < left_px + 8) continue;
    const group = pen("g", { class: "longest", stroke: look.ink, fill: "none", "stroke-width": 2 });
    group.append(pen("circle", { cx: x_px, cy: y_px, r: 4.5 }), pen("circle", { cx: x_px, cy: y_px, r: 1 }));
    if (isChosen && condition === "new" && !isNarrow) {
      const day = inUnits("distance", answer.longestDay_km, units);
      const words = [`longest day, ${Math.round(day.number)} ${day.unit}`, "longest day"];
      const beside = freeBeside(x_px, words, marksOf(answer.packs[index], units)[0], frame);
      if (beside) {
        const attributes = { x: beside.x_px, y: y_px + 5, "text-anchor": beside.anchor, "font-style": "italic" };
        group.append(halo(pen, { ...attributes, fill: look.ink }, beside.words));
      }
    }
    out.push(group);
  }
  return out;
}

/** The first of some words that have room at the left or at the right of a ring, where they meet neither the mark at its height nor that mark's words. */
function freeBeside(ring_px: number, words: readonly string[], mark: Mark, frame: RowFrame) {
  const { toPixel, left_px, right_px } = frame;
  const label = labelPlace(mark, frame);
  const taken = [
    [toPixel(mark.band.low) - 8, toPixel(mark.band.high) + 8] as const,
    [label.from_px, label.to_px] as const,
  ];
  const isFree = (from_px: number, to_px: number) =>
    from_px >= left_px && to_px <= right_px && taken.every(([from, to]) => to_px < from || from_px > to);
  for (const each of words) {
    const width_px = LETTER_px * each.length;
    if (isFree(ring_px - 10 - width_px, ring_px - 10)) return { words: each, x_px: ring_px - 10, anchor: "end" };
    if (isFree(ring_px + 10, ring_px + 10 + width_px)) return { words: each, x_px: ring_px + 10, anchor: "start" };
  }
  return undefined;
}

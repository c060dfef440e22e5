import { messageIn } from "../../../shared/quantity/message.ts";
import { inUnits } from "../../../shared/quantity/writeQuantity.ts";
import { type Answer, largestWords } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type AnswerDrawing, BELOW_ratio, LETTER_px, type RowFrame, type RowLine } from "./answerDrawing.ts";
import { markShape } from "./bandMarks.ts";
import { drawEvenings } from "./drawEvenings.ts";
import type { Evenings } from "./eveningDots.ts";
import { marksOf } from "./marks.ts";
import { type Draw, halo } from "./svg.ts";

/** Every evening of a pack as dots; for the chosen one also its band, and the name of its longest day. */
export function yearRow(
  pen: Draw,
  answer: Answer,
  evenings: Evenings,
  { units }: AnswerDrawing,
  { middle_px, space_px, isChosen }: RowLine,
  frame: RowFrame,
): SVGElement[] {
  const { index, left_px, right_px, isNarrow, toPixel } = frame;
  const pack = answer.packs[index];
  const room = { above_px: 0.5 * space_px, below_px: 0.42 * space_px };
  const out = drawEvenings(pen, evenings, { middle_px, ...room, left_px, right_px, toPixel });
  const short = (side: Evenings["new"]) => side.filter(({ left }) => toPixel(left) < left_px).length;
  for (const [count, y_px] of [
    [short(evenings.new), middle_px - 8],
    [short(evenings.old), middle_px + 17],
  ] as const) {
    if (count > 0)
      out.push(
        halo(
          pen,
          { x: left_px + 4, y: y_px, fill: look.inkSoft },
          `‹ ${count === 1 ? "1 day" : `${count} days`}`,
          look.tint,
        ),
      );
  }
  if (!isChosen) {
    const waste = answer.largest?.index === index && !isNarrow ? largestWords(answer) : undefined;
    if (waste) {
      const from_px = toPixel(0) + 10;
      const lines = messageIn(waste, units).split("; ");
      const free_px = toPixel(Math.min(...evenings.new.map(({ left }) => left))) - 10 - from_px;
      if (free_px > 6.6 * Math.max(...lines.map(({ length }) => length)))
        out.push(
          ...lines.map((line, i) =>
            pen("text", { class: "waste", x: from_px, y: middle_px - 22 + 16 * i, fill: look.inkSoft }, line),
          ),
        );
    }
    return out;
  }
  const old = marksOf(pack, units).find(({ condition }) => condition === "tenYearsWinter");
  if (old) {
    const y_px = middle_px + BELOW_ratio * space_px - 11; // its letters stay over the row's edge
    out.push(markShape(pen, old, y_px, toPixel, true, left_px));
    const words = isNarrow ? "winter, ten years" : "usual winter day, ten years";
    const low_px = Math.max(left_px, toPixel(old.band.low));
    const isLeft = low_px - 10 - LETTER_px * words.length > left_px;
    // A mark beyond the left edge is not seen, and its words stand at the edge.
    const beside_px = Math.max(left_px - 6, toPixel(old.band.high)) + 10;
    const x = isLeft ? low_px - 10 : Math.min(right_px - LETTER_px * words.length, beside_px);
    out.push(
      halo(
        pen,
        { class: "mark-label", x, y: y_px + 5, "text-anchor": isLeft ? "end" : "start", "font-weight": 600 },
        words,
      ),
    );
  }
  const longest = evenings.new.filter(({ isLongest }) => isLongest).map(({ left }) => left);
  if (longest.length > 0 && answer.longestDay_km !== undefined && !isNarrow) {
    const day = inUnits("distance", answer.longestDay_km, units);
    const words = `longest day, ${Math.round(day.number)} ${day.unit}`;
    const ring_px = toPixel(Math.min(...longest));
    const width_px = LETTER_px * words.length;
    const isLeft = ring_px - 12 - width_px > left_px;
    const x = isLeft ? ring_px - 12 : Math.max(left_px + 4, ring_px) + 12;
    out.push(
      halo(
        pen,
        { x, y: middle_px - 0.3 * space_px, "text-anchor": isLeft ? "end" : "start", "font-style": "italic" },
        words,
      ),
    );
  }
  return out;
}

/** The least and the most that is left of a pack's evenings. */
export function extremesOf(evenings: Evenings | undefined): number[] {
  if (!evenings) return [];
  const all = [...evenings.new, ...evenings.old].map(({ left }) => left);
  return all.length === 0 ? [] : [Math.min(...all), Math.max(...all)];
}

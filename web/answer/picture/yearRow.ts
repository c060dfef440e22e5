import { inUnits } from "../../../shared/quantity/writeQuantity.ts";
import type { Answer } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type AnswerDrawing, BELOW_ratio, LETTER_px, type RowFrame, type RowLine } from "./answerDrawing.ts";
import { markShape } from "./bandMarks.ts";
import { drawEvenings, ringsOf } from "./drawEvenings.ts";
import type { Evenings } from "./eveningDots.ts";
import { marksOf } from "./marks.ts";
import { type Draw, halo } from "./svg.ts";
import { wasteNote } from "./wasteNote.ts";
import { wordsBeside } from "./wordsBeside.ts";

/** So far within the picture the first dot stands. */
const EDGE_px = 2;
/** So far above the middle of a band its words reach. */
const LETTERS_px = 7;

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
  const [above, below] = [edgeOf(evenings.new, frame), edgeOf(evenings.old, frame)];
  const edges = { aboveFrom_px: above.from_px, belowFrom_px: below.from_px };
  const out = drawEvenings(pen, evenings, { middle_px, ...room, ...edges, right_px, toPixel });
  for (const [{ words }, y_px] of [
    [above, middle_px - 8],
    [below, middle_px + (isNarrow ? 12 : 17)],
  ] as const) {
    if (words !== "") out.push(halo(pen, { x: left_px + 4, y: y_px, fill: look.inkSoft }, words, look.tint));
  }
  if (!isChosen) {
    const first = Math.min(...evenings.new.map(({ left }) => left));
    if (!isNarrow) out.push(...wasteNote(pen, answer, index, units, { y_px: middle_px - 22, first, toPixel }));
    return out;
  }
  const old = marksOf(pack, units).find(({ condition }) => condition === "tenYearsWinter");
  if (old) {
    // Its letters stay over the row's edge, and under the days counted beyond the left one.
    const y_px = middle_px + BELOW_ratio * space_px - (isNarrow ? 9 : 11);
    out.push(markShape(pen, old, y_px, toPixel, true, left_px));
    const words = isNarrow ? "winter, ten years" : "usual winter day, ten years";
    const side = { middle_px, height_px: room.below_px, from_px: below.from_px, toPixel };
    const taken = ringsOf(evenings.old, 1, side).filter((ring) => ring.y_px + ring.r > y_px - LETTERS_px);
    const { x, isLeft } = wordsBeside(old.band, LETTER_px * words.length, taken, frame);
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

/**
 * From where on the evenings of a side are drawn, and the words that count those beyond: they stand at the left edge, and no evening is drawn where
 * they stand, but counted with them.
 */
function edgeOf(side: Evenings["new"], { left_px, toPixel }: RowFrame): { from_px: number; words: string } {
  const beyond = (from_px: number) => side.filter(({ left }) => toPixel(left) < from_px).length;
  const wordsOf = (count: number) => `‹ ${count === 1 ? "1 day" : `${count} days`}`;
  const edge_px = left_px + EDGE_px;
  const count = beyond(edge_px);
  if (count === 0) return { from_px: edge_px, words: "" };
  // Counting what they cover may make the words a letter longer, hence twice.
  const after_px = (words: string) => left_px + 2 * EDGE_px + 4 + LETTER_px * words.length;
  const from_px = after_px(wordsOf(beyond(after_px(wordsOf(count)))));
  return { from_px, words: wordsOf(beyond(from_px)) };
}

/** The least and the most that is left of a pack's evenings. */
export function extremesOf(evenings: Evenings | undefined): number[] {
  if (!evenings) return [];
  const all = [...evenings.new, ...evenings.old].map(({ left }) => left);
  return all.length === 0 ? [] : [Math.min(...all), Math.max(...all)];
}

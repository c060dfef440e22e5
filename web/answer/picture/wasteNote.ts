import { messageIn } from "../../../shared/quantity/message.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { type Answer, largestWords } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import type { RowFrame } from "./answerDrawing.ts";
import type { Draw } from "./svg.ts";

/** Taken as the width of a letter of the note. */
const LETTER_px = 6.6;
const LINE_px = 16;

/** What the largest pack carries for nothing, where its row has room: between home and what is first drawn of it, from `y_px` down. */
export function wasteNote(
  pen: Draw,
  answer: Answer,
  index: number,
  units: UnitHabit,
  { y_px, first, toPixel }: { readonly y_px: number; readonly first: number } & Pick<RowFrame, "toPixel">,
): SVGElement[] {
  const waste = answer.largest?.index === index ? largestWords(answer) : undefined;
  const lines = waste ? messageIn(waste, units).split("; ") : [];
  const x = toPixel(0) + 10;
  if (toPixel(first) - 10 - x < LETTER_px * Math.max(...lines.map(({ length }) => length))) return [];
  return lines.map((line, i) => pen("text", { class: "waste", x, y: y_px + LINE_px * i, fill: look.inkSoft }, line));
}

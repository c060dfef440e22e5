import { messageIn } from "../../../shared/quantity/message.ts";
import type { Answer } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { type AnswerDrawing, BELOW_ratio, MARK_ratio, type RowFrame } from "./answerDrawing.ts";
import { markLabel, markShape } from "./bandMarks.ts";
import { rings } from "./longestRings.ts";
import { inReaders, marksOf } from "./marks.ts";
import { pinnedSpans } from "./pinnedSpans.ts";
import { rowNames } from "./rowNames.ts";
import type { Draw } from "./svg.ts";
import { wasteNote } from "./wasteNote.ts";
import { yearRow } from "./yearRow.ts";

/** One pack: its name and verdict, and what is left of its day as marks, or as a dot an evening. */
export function packRow(pen: Draw, answer: Answer, drawing: AnswerDrawing, frame: RowFrame): SVGElement {
  const { index, place, left_px, right_px, isNarrow, toPixel, top_px } = frame;
  const { rowHeight_px, units, chosen } = drawing;
  const pack = answer.packs[index];
  const isChosen = index === chosen;
  const y0 = top_px + place * rowHeight_px;
  const strip_px = isNarrow ? 20 : 0;
  const space_px = rowHeight_px - strip_px;
  const middle_px = y0 + strip_px + (1 - BELOW_ratio) * space_px;
  const group = pen("g", { class: isChosen ? "row is-chosen" : "row", "data-row": place });
  const edge = (y_px: number) =>
    pen("line", {
      class: isChosen ? "edge-chosen" : "edge",
      x1: 0,
      x2: right_px + 8,
      y1: y_px,
      y2: y_px,
      stroke: isChosen ? look.accent : look.rule,
      "stroke-width": isChosen ? 2 : 1,
    });
  const isBelowChosen = place > 0 && drawing.rows[place - 1] === chosen;
  if (isChosen || (place > 0 && !isBelowChosen)) group.append(edge(y0));
  if (isChosen) group.append(edge(y0 + rowHeight_px));
  group.append(...rowNames(pen, answer, index, { y0, isNarrow, isChosen, rowHeight_px, right_px, units }));
  if (pack.stop || !pack.left) {
    const words = pack.stop ? messageIn(pack.stop.sentence, units) : "The car does not drive this road with it.";
    group.append(
      pen("text", { x: Math.max(left_px, toPixel(0)) + 10, y: middle_px + 5, "font-style": "italic" }, words),
    );
    return group;
  }
  group.append(
    pen("line", { class: "middle", x1: left_px, x2: right_px, y1: middle_px, y2: middle_px, stroke: look.pinned }),
  );
  const evenings = drawing.evenings?.get(pack.name);
  if (evenings) {
    group.append(...yearRow(pen, answer, evenings, drawing, { middle_px, space_px, isChosen }, frame));
    group.append(...pinnedSpans(pen, pack.name, drawing, { y0: y0 + strip_px, space_px, isChosen }, frame));
    return group;
  }
  for (const mark of marksOf(pack, units)) {
    const y_px = middle_px + MARK_ratio[mark.condition] * space_px;
    group.append(markShape(pen, mark, y_px, toPixel, isChosen, left_px));
    if (isChosen) group.append(markLabel(pen, mark, y_px, frame));
  }
  group.append(...pinnedSpans(pen, pack.name, drawing, { y0: y0 + strip_px, space_px, isChosen }, frame));
  group.append(...rings(pen, answer, index, drawing, { middle_px, space_px, isChosen }, frame));
  if (!isChosen && !isNarrow) {
    const upper = marksOf(pack, units).filter(({ condition }) => condition !== "tenYearsWinter");
    const ring = pack.longest ? [inReaders(pack.longest.new, units).value].filter((value) => value > 0) : [];
    const first = Math.min(...ring, ...upper.map(({ band }) => band.low));
    group.append(...wasteNote(pen, answer, index, units, { y_px: y0 + 0.54 * space_px - 21, first, toPixel }));
  }
  return group;
}

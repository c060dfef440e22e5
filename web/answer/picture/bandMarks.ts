import { conditionNames } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import { LETTER_px, type RowFrame } from "./answerDrawing.ts";
import type { Mark } from "./marks.ts";
import { type Draw, halo } from "./svg.ts";

/** A band with its ends, and on it the value: a ring when new, a dot in winter, a square at ten years in winter. */
export function markShape(
  pen: Draw,
  { condition, band }: Mark,
  y_px: number,
  toPixel: (left: number) => number,
  isChosen: boolean,
  left_px: number,
): SVGElement {
  const isNew = condition === "new";
  const colour = isNew ? look.dayOther : look.dayWinter;
  const isBlack = isChosen && condition === "tenYearsWinter";
  const stroke = isBlack ? look.ink : colour;
  const group = pen("g", { class: `mark mark-${condition}${isBlack ? " is-band" : ""}`, stroke, fill: stroke });
  const [low, high, value] = [band.low, band.high, band.value].map((left) => Math.max(left_px, toPixel(left)));
  if (high <= left_px) {
    if (isChosen) return group; // its words say where it is
    const words = `‹ ${Math.ceil(-band.value)} short`;
    group.append(halo(pen, { x: left_px + 4, y: y_px + 5, fill: look.inkSoft }, words, look.tint));
    return group;
  }
  // Rings of longest days may lie behind the band of the answer: it stands out by a rim of paper.
  if (isBlack) {
    const rim = { x: low - 4, y: y_px - 7, width: high - low + 8, height: 14, rx: 2 };
    group.append(pen("rect", { class: "rim", ...rim, fill: look.paper, stroke: "none" }));
  }
  group.append(pen("line", { x1: low, x2: high, y1: y_px, y2: y_px, "stroke-width": isBlack ? 4 : 3 }));
  for (const end of [low, high]) {
    group.append(pen("line", { x1: end, x2: end, y1: y_px - 5, y2: y_px + 5, "stroke-width": isBlack ? 3 : 2 }));
  }
  if (isNew) group.append(pen("circle", { cx: value, cy: y_px, r: 5, fill: look.paper, "stroke-width": 2.5 }));
  else if (condition === "winter") group.append(pen("circle", { cx: value, cy: y_px, r: 5, stroke: "none" }));
  else group.append(pen("rect", { x: value - 5, y: y_px - 5, width: 10, height: 10, stroke: "none" }));
  return group;
}

/** Which mark it is, beside it on the side that has room. */
export function markLabel(pen: Draw, mark: Mark, y_px: number, frame: RowFrame): SVGElement {
  const { words, from_px, to_px, isRight } = labelPlace(mark, frame);
  const attributes = {
    class: "mark-label",
    y: y_px + 5,
    ...(mark.condition === "tenYearsWinter" && { "font-weight": 600 }),
    ...(isRight ? { x: from_px, "text-anchor": "start" } : { x: to_px, "text-anchor": "end" }),
  };
  return halo(pen, attributes, words);
}

/** The words beside a mark, and the pixels that they take at most. */
export function labelPlace(mark: Mark, { toPixel, right_px, left_px, isNarrow }: RowFrame) {
  const name = conditionNames[mark.condition];
  const isBeyond = toPixel(mark.band.high) <= left_px;
  const full = `${name}: ${mark.words}`;
  const words = isBeyond ? `‹ ${full}` : isNarrow ? name : full;
  const width_px = LETTER_px * words.length;
  const end_px = isBeyond ? left_px + 4 : toPixel(mark.band.high) + 10;
  const isRight = end_px + width_px < right_px;
  const to_px = isRight ? end_px + width_px : Math.max(left_px + width_px, toPixel(mark.band.low) - 10);
  return { words, from_px: to_px - width_px, to_px, isRight };
}

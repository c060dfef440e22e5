import { type Answer, conditionNames } from "../../../sim/index.ts";
import * as look from "../../look/tokens.ts";
import type { AnswerDrawing, AnswerPicture } from "./answerDrawing.ts";
import { leftAxis } from "./axis.ts";
import type { Evenings } from "./eveningDots.ts";
import { ground } from "./ground.ts";
import { marksOf } from "./marks.ts";
import { packRow } from "./packRow.ts";
import { penOf } from "./svg.ts";
import { extremesOf } from "./yearRow.ts";

/** Below this width the names stand over their rows. */
const NARROW_px = 600;
const HEAD_px = 26;
const FOOT_px = 26;
const TEXT_px = 14;

/**
 * Every pack's evening on coming home: a row a pack, along it what is left of the day. New above the row's line, winter next to it, at
 * ten years in winter below: where each day's dot will stand. Each mark is a band, with the value as taken on it.
 */
export function drawAnswer(answer: Answer, drawing: AnswerDrawing): AnswerPicture {
  const { width_px, rowHeight_px, units, rows, document } = drawing;
  const pen = penOf(document);
  const isNarrow = width_px < NARROW_px;
  const left_px = isNarrow ? 2 : 138;
  const right_px = width_px - (isNarrow ? 10 : 14);
  const axis = leftAxis(
    rows.flatMap((i) => [
      ...marksOf(answer.packs[i], units).flatMap(({ band }) => [band.low, band.high]),
      ...extremesOf(drawing.evenings?.get(answer.packs[i].name)),
    ]),
    isNarrow ? 5 : 9,
  );
  const toPixel = (left: number) => left_px + ((left - axis.from) / (axis.to - axis.from)) * (right_px - left_px);
  const fromPixel = (x_px: number) => axis.from + ((x_px - left_px) / (right_px - left_px)) * (axis.to - axis.from);
  const bottom_px = HEAD_px + rows.length * rowHeight_px;
  const frame = { axis, toPixel, fromPixel, top_px: HEAD_px, bottom_px };
  const svg = pen("svg", {
    class: "answer-picture",
    viewBox: `0 0 ${width_px} ${bottom_px + FOOT_px}`,
    width: width_px,
    height: bottom_px + FOOT_px,
    role: "img",
    "aria-label": altOf(answer, drawing),
    "font-family": look.face,
    "font-size": TEXT_px,
    fill: look.ink,
  }) as SVGSVGElement;
  svg.append(...ground(pen, frame, { left_px, right_px, isNarrow, units }));
  // Before the rows, so that it runs through no word of theirs.
  const home_px = toPixel(0);
  svg.append(
    pen("line", {
      class: "home",
      x1: home_px,
      x2: home_px,
      y1: 2,
      y2: bottom_px + 4,
      stroke: look.ink,
      "stroke-width": 2,
    }),
  );
  rows.forEach((index, place) => {
    svg.append(packRow(pen, answer, drawing, { ...frame, index, place, left_px, right_px, isNarrow }));
  });
  const rowAt = (y_px: number) => Math.max(0, Math.min(rows.length - 1, Math.floor((y_px - HEAD_px) / rowHeight_px)));
  return { svg, ...frame, rowAt };
}

/** The picture in words. */
function altOf({ packs }: Answer, { rows, units, evenings }: AnswerDrawing): string {
  const unit = units === "metric" ? "Kilometres" : "Miles";
  const each = rows.map((i) => {
    const { name, verdict, stop } = packs[i];
    if (stop) return `${name}: stop`;
    const year = evenings?.get(name);
    const home = (days: Evenings["new"]) => `${days.filter(({ left }) => left >= 0).length} of ${days.length}`;
    const days = year ? [`new, home on ${home(year.new)} driving days, at ten years on ${home(year.old)}`] : [];
    const marks = marksOf(packs[i], units).map(({ condition, words }) => `${conditionNames[condition]} ${words}`);
    return `${name}: ${[...marks, ...days, ...(verdict ? [verdict] : [])].join(", ")}`;
  });
  return `${unit} left on coming home from a usual day. ${each.join(". ")}.`;
}

import { rect, ruleX, ruleY } from "@observablehq/plot";
import { quarterHours } from "../../shared/quantity/quarterHours.ts";
import { ink, paper, tint } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { BELOW_PX, drawFrame, type Frame, positionByRow } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { wrapped } from "./parts/figure/textWidth.ts";
import { wordsOverLines } from "./parts/lines/wordsOverLines.ts";

/** One place to charge. Hours of the day and of the winter's day are nothing for a car that does not drive its road. */
export interface ChargeBar {
  readonly name: string;
  readonly usualDay_h?: number | undefined;
  readonly winterDay_h?: number | undefined;
  readonly emptyToFull_h: number;
  /** How long the night is, and whether its hours are the cheap ones. */
  readonly night?: { readonly hours_h: number; readonly isCheap: boolean } | undefined;
}

const BAR_PX = 20;
const LEFT_PX = 14;
const TOP_PX = 8;

/** How long a charge takes at each place: a bar from nothing to the usual day, on to the winter's day, on to full; a mark where the night ends. */
export function chargeTimes(bars: readonly ChargeBar[], drawing: Drawing): Chart {
  if (bars.length === 0)
    return emptyFigure(drawing, "The pack is not charged anywhere, so there are no hours to show.");
  const right = drawing.width_px - 18;
  const words = bars.map(wordsOf);
  const fitted = (line: string, most: number) => wrapped(line, right - LEFT_PX - 8, FONT_PX, most);
  const lines = bars.map(({ name }, i) => [...fitted(name, 1), ...fitted(words[i], 3)]);
  const row_px = BAR_PX + 16 + LINE_PX * Math.max(...lines.map(({ length }) => length));
  const longest_h = Math.max(...bars.map(({ emptyToFull_h, night }) => Math.max(emptyToFull_h, night?.hours_h ?? 0)));
  const bottom = TOP_PX + bars.length * row_px;
  const frame: Frame = {
    left: LEFT_PX,
    right,
    top: TOP_PX,
    bottom,
    height: bottom + BELOW_PX,
    x: [0, longest_h * 1.04],
    y: [bottom - TOP_PX, 0],
  };
  const place = (i: number) => ({ y1: i * row_px + 4, y2: i * row_px + 4 + BAR_PX });
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: "Plugged in (h)", ticks: ticksFor(right - LEFT_PX) }),
    bars.flatMap(({ usualDay_h = 0, winterDay_h = 0, emptyToFull_h, night }, i) => {
      const { colour } = packStyle(i, 0);
      const at = place(i);
      return [
        rect([0], { ...at, x1: 0, x2: emptyToFull_h, fill: tint, stroke: colour }),
        rect([0], { ...at, x1: 0, x2: winterDay_h, fill: colour, fillOpacity: 0.45 }),
        rect([0], { ...at, x1: 0, x2: usualDay_h, fill: colour, stroke: paper }),
        night
          ? ruleX([night.hours_h], {
              y1: at.y1 - 4,
              y2: at.y2 + 4,
              stroke: ink,
              strokeWidth: 2,
              strokeDasharray: "3 2",
            })
          : null,
      ];
    }),
    ruleX([0], { stroke: ink, strokeWidth: 1 }),
    ruleY([bottom - TOP_PX], { stroke: ink, strokeWidth: 0.5 }),
  ]);
  const under = (i: number) => TOP_PX + i * row_px + 4 + BAR_PX;
  bars.forEach((_, i) => {
    lines[i].forEach((line, k) => {
      wordsOverLines(svg, line, { x: LEFT_PX + 4, y: under(i) + 11 + k * LINE_PX, strip_px: LINE_PX + 1 });
    });
  });
  const alt = `How long a charge takes. ${bars.map(({ name }, i) => `${name}: ${words[i]}.`).join(" ")}`;
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "supply", label: "Place to charge" },
        { name: "usualDay_h", label: "Usual day (h)" },
        { name: "winterDay_h", label: "Winter day (h)" },
        { name: "emptyToFull_h", label: "Empty to full (h)" },
        { name: "night_h", label: "Night (h)" },
      ],
      rows: bars.map(({ name, usualDay_h, winterDay_h, emptyToFull_h, night }) => [
        name,
        usualDay_h ?? "",
        winterDay_h ?? "",
        emptyToFull_h,
        night?.hours_h ?? "",
      ]),
    },
    // All of a row reads it, its words too.
    position: positionByRow("supply", bars.length, {
      middle_px: TOP_PX + 0.5 * row_px,
      row_px,
      from_px: LEFT_PX,
      to_px: right,
    }),
    read(at) {
      const i = Math.min(bars.length - 1, Math.max(0, Math.round(at)));
      return { where: bars[i].name, values: [{ label: "takes", text: words[i] }] };
    },
  };
}

function wordsOf({ usualDay_h, winterDay_h, emptyToFull_h, night }: ChargeBar): string {
  const day = usualDay_h === undefined ? "" : `usual day ${quarterHours(usualDay_h)}, `;
  const winter = winterDay_h === undefined ? "" : `in winter ${quarterHours(winterDay_h)}, `;
  const dashed = night
    ? `; ${night.isCheap ? "cheap hours" : "there for"} ${quarterHours(night.hours_h)} (dashed)`
    : "";
  return `${day}${winter}empty to full ${quarterHours(emptyToFull_h)}${dashed}`;
}

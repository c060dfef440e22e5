import { rect, ruleX } from "@observablehq/plot";
import { greys, highlight, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionByRow, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";

export interface RankedUnknownsInput {
  readonly range_m: number;
  /** What most moves the range first. */
  readonly unknowns: readonly { readonly label: string; readonly atLow_m: number; readonly atHigh_m: number }[];
}

const BAR_PX = 14;

/** Which unknown matters most: the range with each value at either end of its own band, a bar each, the longest in the highlight. */
export function rankedUnknowns({ range_m, unknowns }: RankedUnknownsInput, drawing: Drawing): Chart {
  if (unknowns.length === 0) return emptyFigure(drawing, "No unknown value moves the range.");
  const unit = (drawing.units ?? METRIC).distance;
  const shown = (distance_m: number) => inUnit(unit, distance_m);
  const bars = unknowns.map(({ label, atLow_m, atHigh_m }) => ({
    label,
    least: shown(Math.min(atLow_m, atHigh_m, range_m)),
    most: shown(Math.max(atLow_m, atHigh_m, range_m)),
  }));
  const space_px = Math.max(110, drawing.width_px * 0.3);
  const names = bars.map(({ label }) => wrapped(label, space_px, FONT_PX, 2));
  const words = bars.map(
    ({ least, most }) =>
      `${threeFigures(Math.round(least * 10) / 10)} to ${threeFigures(Math.round(most * 10) / 10)} ${unit.sign}`,
  );
  const left = 14 + Math.max(...names.flat().map((name) => textWidth_px(name, FONT_PX)));
  const right = drawing.width_px - 14 - Math.max(...words.map((each) => textWidth_px(each, FONT_PX)));
  const top = 30;
  const row_px = (Math.max(...names.map(({ length }) => length)) - 1) * LINE_PX + 26;
  const bottom = top + bars.length * row_px;
  const frame: Frame = {
    left,
    right,
    top,
    bottom,
    height: bottom + BELOW_PX,
    x: domain(Math.min(...bars.map(({ least }) => least)), Math.max(...bars.map(({ most }) => most))),
    y: [bottom - top, 0],
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Range (${unit.sign})`, ticks: Math.min(6, ticksFor(right - left)) }),
    rect(bars, {
      x1: "least",
      x2: "most",
      y1: (_: unknown, i: number) => (i + 0.5) * row_px - BAR_PX / 2,
      y2: (_: unknown, i: number) => (i + 0.5) * row_px + BAR_PX / 2,
      fill: (_: unknown, i: number) => (i === 0 ? highlight : (greys[2] ?? inkSoft)),
    }),
    ruleX([shown(range_m)], { stroke: ink, strokeWidth: 1.4 }),
  ]);
  bars.forEach(({ most }, i) => {
    const y = top + (i + 0.5) * row_px;
    writeWords(svg, { x: left - 8, y, lines: names[i] ?? [], anchor: "end" });
    writeWords(svg, { x: xPixel(frame, most) + 6, y, lines: [words[i] ?? ""], fill: inkSoft, isHaloed: true });
  });
  const now = `as it stands ${threeFigures(Math.round(shown(range_m)))} ${unit.sign}`;
  writeWords(svg, { x: xPixel(frame, shown(range_m)), y: top - 12, lines: [now], anchor: "middle", isHaloed: true });
  const alt = `Range ${now}; with one value at the ends of its band: ${bars.map(({ label }, i) => `${label} ${words[i]}`).join("; ")}.`;
  nameFigure(svg, alt);
  const middle = (place: number) => top + (place + 0.5) * row_px + BAR_PX / 2 + 2;
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "value", label: "Value" },
        { name: `least_${unit.suffix}`, label: `Least range (${unit.sign})` },
        { name: `most_${unit.suffix}`, label: `Most range (${unit.sign})` },
      ],
      rows: bars.map(({ label, least, most }) => [label, least, most]),
    },
    position: positionByRow("unknown", bars.length, { middle_px: middle(0), row_px, from_px: left, to_px: right }),
    read(at) {
      const i = Math.min(bars.length - 1, Math.max(0, Math.round(at)));
      return { where: bars[i]?.label ?? "", values: [{ label: "range", text: words[i] ?? "" }] };
    },
  };
}

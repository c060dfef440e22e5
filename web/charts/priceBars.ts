import { rect, ruleX, ruleY } from "@observablehq/plot";
import { moneyBetween } from "../../shared/quantity/money.ts";
import type { Span } from "../../sim/index.ts";
import { ink, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { moneyAxis } from "./parts/axes/moneyAxis.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing, Table } from "./parts/figure/chart.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { BELOW_PX, drawFrame, type Frame, positionByRow, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";

/** A price from low to high: of a pack by its place in the job, or of an alternative. */
export interface PriceBar {
  readonly name: string;
  readonly price: Span;
  readonly index?: number;
}

const ROW_PX = 42;
const BAR_PX = 12;
const LEFT_PX = 14;
const TOP_PX = 6;

/** What each way costs at once, a bar from its low to its high end. `lines` are what a spreadsheet is given: every line of the quotes. */
export function priceBars(bars: readonly PriceBar[], lines: Table, currency: string, drawing: Drawing): Chart {
  if (bars.length === 0) return emptyFigure(drawing, "No pack has its whole price yet, so there is none to show.");
  const right = drawing.width_px - 18;
  const bottom = TOP_PX + bars.length * ROW_PX;
  const most = Math.max(...bars.map(({ price }) => price.high)) || 1;
  const { scale, label } = moneyAxis("Price", currency, most);
  const frame: Frame = {
    left: LEFT_PX,
    right,
    top: TOP_PX,
    bottom,
    height: bottom + BELOW_PX,
    x: [0, (most / scale) * 1.04],
    y: [bottom - TOP_PX, 0],
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label, ticks: ticksFor(right - LEFT_PX) }),
    bars.map(({ price, index }, i) => {
      const y1 = i * ROW_PX + 22;
      const at = { x1: price.low / scale, x2: price.high / scale, y1, y2: y1 + BAR_PX };
      if (index === undefined) return rect([0], { ...at, fill: "none", stroke: ink });
      const { colour } = packStyle(index, drawing.chosen);
      return rect([0], { ...at, fill: colour, stroke: price.high > price.low ? paper : colour });
    }),
    ruleX([0], { stroke: ink, strokeWidth: 1 }),
    ruleY([bottom - TOP_PX], { stroke: ink, strokeWidth: 0.5 }),
  ]);
  const format = (price: Span) => moneyBetween(price, currency);
  bars.forEach(({ name, price }, i) => {
    const words = `: ${format(price)}`;
    const [short = ""] = wrapped(name, right - LEFT_PX - textWidth_px(words, FONT_PX), FONT_PX, 1);
    const line = `${short}${words}`;
    // Above its bar, and within the figure however dear it is.
    const x = Math.max(LEFT_PX + 4, Math.min(xPixel(frame, price.low / scale), right - textWidth_px(line, FONT_PX)));
    writeWords(svg, { x, y: TOP_PX + i * ROW_PX + 11, lines: [line], isHaloed: true });
  });
  const alt = `Price of each way: ${bars.map(({ name, price }) => `${name} ${format(price)}`).join("; ")}.`;
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: lines,
    position: positionByRow("way", bars.length, {
      middle_px: TOP_PX + 22 + BAR_PX / 2,
      row_px: ROW_PX,
      from_px: LEFT_PX,
      to_px: right,
    }),
    read(at) {
      const { name, price } = bars[Math.min(bars.length - 1, Math.max(0, Math.round(at)))];
      return { where: name, values: [{ label: "price", text: format(price) }] };
    },
  };
}

import { dot, type Markish } from "@observablehq/plot";
import { paper } from "../../../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import type { Drawing } from "../figure/chart.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { BELOW_PX, drawFrame, type Frame, xPixel, yPixel } from "../figure/frame.ts";
import type { PackStyle } from "../figure/packStyle.ts";
import { textWidth_px, wrapped } from "../figure/textWidth.ts";
import { endLabels } from "./endLabels.ts";
import { linePath } from "./linePath.ts";

interface NamedLine {
  readonly name: string;
  readonly style: PackStyle;
  /** In the units shown, rising in x; `isHollow` points are drawn as a ring. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly isHollow?: boolean }[];
}

export interface NamedLinesInput {
  readonly lines: readonly NamedLine[];
  /** None where a figure with the same scale stands beneath. */
  readonly xLabel: string | null;
  /** Where numbers stand on the scale below and how they read, where round ones as they are will not do. */
  readonly xTicks?: { readonly ticks: readonly number[]; readonly tickFormat: (value: number) => string };
  readonly yLabel: string;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly top_px: number;
  readonly plotHeight_px: number;
  /** Marks every point, not only the last. */
  readonly isDotted: boolean;
  readonly marksBelow?: readonly Markish[];
}

const LEFT_PX = 52;

/** Lines over a common scale, each named at its right end. */
export function namedLines(drawing: Drawing, input: NamedLinesInput): { svg: SVGSVGElement; frame: Frame } {
  const space_px = Math.min(190, Math.max(102, drawing.width_px * 0.26));
  const names = input.lines.map(({ name }) => wrapped(name, space_px, FONT_PX, drawing.width_px < 480 ? 3 : 2));
  const widest_px = Math.max(0, ...names.flat().map((words) => textWidth_px(words, FONT_PX)));
  const bottom = input.top_px + input.plotHeight_px;
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - Math.min(space_px, widest_px) - 26,
    top: input.top_px,
    bottom,
    height: bottom + (input.xLabel === null ? 16 : BELOW_PX),
    x: input.x,
    y: input.y,
  };
  const noWords = input.xLabel === null ? { tickFormat: () => "" } : {};
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: input.xLabel, ticks: ticksFor(frame.right - frame.left), ...input.xTicks, ...noWords }),
    leftAxis({ label: input.yLabel, ticks: 5 }, LEFT_PX),
    ...(input.marksBelow ?? []),
    input.lines.map(({ style: { colour, dash, symbol, width_px }, points }) => {
      const marked = input.isDotted ? points.filter((point) => !point.isHollow) : points.slice(-1);
      const hollow = points.filter((point) => point.isHollow);
      const look = { x: "x", y: "y", r: 3.5, symbol } as const;
      return [
        linePath(
          points.map(({ x }) => xPixel(frame, x)),
          points.map(({ y }) => yPixel(frame, y)),
          { stroke: colour, "stroke-width": width_px, "stroke-dasharray": dash },
        ),
        marked.length > 0 ? dot(marked, { ...look, fill: colour }) : null,
        hollow.length > 0 ? dot(hollow, { ...look, fill: paper, stroke: colour }) : null,
      ];
    }),
  ]);
  const labels = input.lines.flatMap(({ style, points }, i) => {
    const end = points.at(-1);
    if (!end) return [];
    return [{ lines: names[i] ?? [], x: xPixel(frame, end.x), y: yPixel(frame, end.y), colour: style.colour }];
  });
  endLabels(svg, labels, frame.right + 22, frame.top - 20, bottom + 16);
  return { svg, frame };
}

import type { Plot, PlotOptions } from "@observablehq/plot";
import type { Drawing, Position, PositionQuantity } from "./chart.ts";
import { drawPlot } from "./drawPlot.ts";

/** The rectangle that a figure draws in, in pixels of its view box, and what its edges mean in the units shown. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** Room below a frame for its scale and the label of that. */
export const BELOW_PX = 42;

/** A Plot drawing whose straight scales are exactly those of the frame, so that words can be set by the same pixels. */
export function drawFrame(
  drawing: Drawing,
  frame: Frame,
  marks: NonNullable<PlotOptions["marks"]>,
  further: Pick<PlotOptions, "color" | "r"> = {},
): SVGSVGElement & Plot {
  return drawPlot(drawing, {
    ...further,
    height: frame.height,
    marginLeft: frame.left,
    marginRight: drawing.width_px - frame.right,
    marginTop: frame.top,
    marginBottom: frame.height - frame.bottom,
    x: { type: "linear", domain: [...frame.x], axis: null },
    y: { type: "linear", domain: [...frame.y], axis: null },
    marks,
  });
}

/** Pixel of a value on the horizontal scale. */
export function xPixel({ left, right, x: [from, to] }: Frame, value: number): number {
  return left + ((value - from) / (to - from)) * (right - left);
}

/** Pixel of a value on the vertical scale. */
export function yPixel({ top, bottom, y: [from, to] }: Frame, value: number): number {
  return bottom - ((value - from) / (to - from)) * (bottom - top);
}

/**
 * The horizontal scale as a position that other figures share. `perShown` is what one of the unit shown is in the
 * quantity's base unit.
 */
export function positionAlong(frame: Frame, quantity: PositionQuantity, perShown: number, steps = 100): Position {
  const { left, right, x } = frame;
  const first = x[0] * perShown;
  const last = x[1] * perShown;
  return {
    quantity,
    first,
    last,
    step: (last - first) / steps,
    isVertical: false,
    from_px: frame.top,
    to_px: frame.bottom,
    toPixel: (at) => xPixel(frame, at / perShown),
    fromPixel: (pixel) => first + ((pixel - left) / (right - left)) * (last - first),
  };
}

/** Rows below one another, `row_px` apart from the middle of the first, as a position that other figures share. */
export function positionByRow(
  quantity: PositionQuantity,
  count: number,
  rows: { readonly middle_px: number; readonly row_px: number; readonly from_px: number; readonly to_px: number },
): Position {
  const { middle_px, row_px, from_px, to_px } = rows;
  return {
    quantity,
    first: 0,
    last: count - 1,
    step: 1,
    isVertical: true,
    from_px,
    to_px,
    toPixel: (at) => middle_px + at * row_px,
    fromPixel: (pixel) => (pixel - middle_px) / row_px,
  };
}

/** The nearest place on the scale. */
export function within({ first, last }: Position, at: number): number {
  return Math.min(last, Math.max(first, at));
}

/** Value whose pixel this is, also beyond the frame. */
export function valueAtPixel(frame: Frame, direction: "x" | "y", pixel: number): number {
  const [from, to] = frame[direction];
  const pixelOf = direction === "x" ? xPixel : yPixel;
  const start = pixelOf(frame, from);
  return from + ((pixel - start) / (pixelOf(frame, to) - start)) * (to - from);
}

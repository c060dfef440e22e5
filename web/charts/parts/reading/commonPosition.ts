import { type Signal, signal } from "@preact/signals-core";
import type { Position, PositionQuantity } from "../figure/chart.ts";

/** The one position that is being read, in every figure that has its quantity. */
export type CommonPosition = Signal<{ readonly quantity: PositionQuantity; readonly at: number } | undefined>;

/** A position for the figures of one page to share; none is read at first. */
export function commonPosition(): CommonPosition {
  return signal(undefined);
}

/** Where this figure is to be read, or undefined: another quantity is read, or the place lies outside of it. */
export function readAt(position: Position, common: CommonPosition["value"]): number | undefined {
  if (common?.quantity !== position.quantity) return undefined;
  // Ends that differ in the last digits are the same end.
  const slack = (position.last - position.first) * 1e-9;
  return common.at >= position.first - slack && common.at <= position.last + slack ? common.at : undefined;
}

/** How many steps an arrow key can take from end to end, at least one. */
export function stepsOf({ first, last, step }: Position): number {
  return Math.max(1, Math.round((last - first) / step) || 1);
}

/** The position after `count` steps from the first. */
export function atStep(position: Position, count: number): number {
  return position.first + ((position.last - position.first) * count) / stepsOf(position);
}

/** The step nearest to a position. */
export function stepNear(position: Position, at: number): number {
  const long = position.last - position.first;
  return long > 0 ? Math.round(((at - position.first) / long) * stepsOf(position)) : 0;
}

/** The position under a pointer, in pixels of the view box, kept within the figure. */
export function atPointer(position: Position, x: number, y: number): number {
  const at = position.isVertical ? position.fromPixel(y, x) : position.fromPixel(x, y);
  const snapped = position.isVertical ? Math.round(at) : at;
  return Math.min(position.last, Math.max(position.first, snapped));
}

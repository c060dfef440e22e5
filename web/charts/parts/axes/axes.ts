import { axisX, axisY, gridX, gridY, type Markish } from "@observablehq/plot";
import { rule } from "../../../look/tokens.ts";
import { plainNumber } from "../figure/threeFigures.ts";

export interface AxisWords {
  /** With its unit in round brackets; none where another figure beneath says it. */
  readonly label: string | null;
  readonly ticks: number | readonly number[];
  readonly tickFormat?: (value: number) => string;
}

/** Grid lines and a scale below, for every chart alike. */
export function bottomAxis({ label, ticks, tickFormat = plainNumber }: AxisWords): Markish[] {
  return [
    gridX({ ...steps(ticks), stroke: rule, strokeOpacity: 0.6 }),
    axisX({ ...steps(ticks), anchor: "bottom", label, labelArrow: "none", tickSize: 4, tickFormat }),
  ];
}

/** Grid lines and a scale at the left, its label above it, level and easy to read. `width_px` is the left margin. */
export function leftAxis({ label, ticks, tickFormat = plainNumber }: AxisWords, width_px: number): Markish[] {
  return [
    gridY({ ...steps(ticks), stroke: rule, strokeOpacity: 0.6 }),
    axisY({ ...steps(ticks), label, labelArrow: "none", labelOffset: width_px - 6, tickSize: 4, tickFormat }),
  ];
}

/** How many ticks a horizontal axis of this length holds without its numbers meeting. */
export function ticksFor(length_px: number): number {
  return Math.max(2, Math.min(10, Math.floor(length_px / 62)));
}

function steps(ticks: number | readonly number[]): { ticks: number | number[] } {
  return { ticks: typeof ticks === "number" ? ticks : [...ticks] };
}

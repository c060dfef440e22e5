import { line } from "@observablehq/plot";
import type { Channels } from "../../../../sim/index.ts";
import { inkSoft } from "../../../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import { domain, reach } from "../axes/domain.ts";
import type { RoadAxis } from "../axes/roadAxis.ts";
import type { Drawing } from "../figure/chart.ts";
import { inUnit, METRIC } from "../figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame } from "../figure/frame.ts";
import { shade } from "../figure/inks.ts";
import { filledBetween } from "./filledBetween.ts";
import { thin } from "./thin.ts";

export const HEIGHT_PANEL_PX = 136;

/** Height of the road along a run, to stand beneath a figure with the same `left`, `right` and horizontal scale. */
export function heightPanel(
  drawing: Drawing,
  above: Pick<Frame, "left" | "right" | "x">,
  channels: Channels,
  axis: RoadAxis,
): SVGSVGElement {
  const { height: unit } = drawing.units ?? METRIC;
  const [lowest_m, highest_m] = reach(channels.elevation_m, channels.length);
  const y = domain(inUnit(unit, lowest_m), inUnit(unit, highest_m));
  const { left, right, x } = above;
  const frame: Frame = { left, right, x, y, top: 30, bottom: HEIGHT_PANEL_PX - BELOW_PX, height: HEIGHT_PANEL_PX };
  const column = axis.column(channels);
  const rows = thin(column, channels.elevation_m, channels.length, Math.max(1, Math.round(right - left)));
  const along = (row: number) => axis.shown(column[row] as number);
  const heightOf = (row: number) => inUnit(unit, channels.elevation_m[row] as number);
  return drawFrame(drawing, frame, [
    bottomAxis({ label: axis.label, ticks: ticksFor(right - left) }),
    leftAxis({ label: `Height (${unit.sign})`, ticks: 3 }, left),
    filledBetween(rows, along, () => y[0], heightOf, { fill: shade }),
    line(rows, { x: along, y: heightOf, stroke: inkSoft, strokeWidth: 1.4 }),
  ]);
}

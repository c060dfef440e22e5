import { rect, ruleY } from "@observablehq/plot";
import { BEHIND_mps, type Channels } from "../../sim/index.ts";
import { heed, highlight, ink } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain, reach } from "./parts/axes/domain.ts";
import { type Along, roadAxis } from "./parts/axes/roadAxis.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { drawnColumn } from "./parts/figure/drawnColumn.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { shade } from "./parts/figure/inks.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { stackFigures } from "./parts/figure/stackFigures.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { annotateSpans } from "./parts/lines/annotateSpans.ts";
import { HEIGHT_PANEL_PX, heightPanel } from "./parts/lines/heightPanel.ts";
import { heldBackBy } from "./parts/lines/heldBackBy.ts";
import { linePath } from "./parts/lines/linePath.ts";
import { type Span, spansBehind } from "./parts/lines/spansBehind.ts";
import { straighten, UNSEEN_px } from "./parts/lines/straighten.ts";
import { thin } from "./parts/lines/thin.ts";

export interface SpeedTraceInput {
  readonly name: string;
  readonly channels: Channels;
  readonly along: Along;
}

const LEFT_PX = 48;

/**
 * Speed driven along a run, in one line; where the car falls behind, and only there, the speed wanted is drawn too, with what held it
 * back. Where the road rises and falls its height stands beneath.
 */
export function speedTrace(input: SpeedTraceInput, drawing: Drawing): Chart {
  const { channels } = input;
  const n = channels.length;
  if (n === 0) return emptyFigure(drawing, "Nothing has been driven, so there is no speed to show.");
  const units = drawing.units ?? METRIC;
  const [first, end] = reach(input.along === "time" ? channels.time_s : channels.distance_m, n);
  const axis = roadAxis(input.along, end, units);
  const column = axis.column(channels);
  const [lowest_m, highest_m] = reach(channels.elevation_m, n);
  const isHilly = highest_m - lowest_m > 0.5;
  const top_mps = Math.max(reach(channels.speed_mps, n)[1], reach(channels.target_mps, n)[1]);
  const below_px = isHilly ? 16 : BELOW_PX;
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 18,
    top: 46,
    bottom: 226,
    height: 226 + below_px,
    x: [axis.shown(first), end > first ? axis.shown(end) : axis.shown(first) + 1],
    y: domain(0, inUnit(units.speed, top_mps), true),
  };
  const wide_px = Math.round(frame.right - LEFT_PX);
  const rows = thin(column, channels.speed_mps, n, wide_px);
  const x = (row: number) => axis.shown(column[row] as number);
  const unseen_mps = ((frame.y[1] / units.speed.perBase) * UNSEEN_px) / (frame.bottom - frame.top);
  const driven = straighten(rows, column, channels.speed_mps, unseen_mps);
  const asked = straighten(thin(column, channels.target_mps, n, wide_px), column, channels.target_mps, unseen_mps);
  const inSpeed = (speed_mps: number) => inUnit(units.speed, speed_mps);
  const across = (along: number) => xPixel(frame, axis.shown(along));
  const down = (speed_mps: number) => yPixel(frame, inSpeed(speed_mps));
  const speed = (row: number) => inSpeed(channels.speed_mps[row] as number);
  const target = (row: number) => inSpeed(channels.target_mps[row] as number);
  const behind = spansBehind(channels, (end - first) * 0.02, column);
  const missed = behind.map(({ from, to }) =>
    asked.filter((row) => (column[row] as number) >= from && (column[row] as number) <= to),
  );
  const noWords = isHilly ? { tickFormat: () => "" } : {};
  const upper = drawFrame(drawing, frame, [
    rect(behind, {
      x1: (each: Span) => axis.shown(each.from),
      x2: (each: Span) => axis.shown(each.to),
      y1: frame.y[0],
      y2: frame.y[1],
      fill: shade,
      stroke: shade,
    }),
    bottomAxis({ label: isHilly ? null : axis.label, ticks: ticksFor(wide_px), ...noWords }),
    leftAxis({ label: `Speed (${units.speed.sign})`, ticks: 5 }, LEFT_PX),
    missed.map((part) =>
      linePath(drawnColumn(part, column, across), drawnColumn(part, channels.target_mps, down), {
        stroke: heed,
        "stroke-width": 1.4,
        "stroke-dasharray": "4 2",
      }),
    ),
    linePath(drawnColumn(driven, column, across), drawnColumn(driven, channels.speed_mps, down), {
      stroke: highlight,
      "stroke-width": 1.6,
    }),
    ruleY([0], { stroke: ink }),
  ]);
  const named = behind.map(({ from, to, time_s }) => ({
    from: axis.shown(from),
    to: axis.shown(to),
    words: [`${threeFigures(time_s)} s behind`, heldBackBy(channels, { from, to, time_s }, column)]
      .filter(Boolean)
      .join(": "),
  }));
  annotateSpans(upper, frame, named);
  const svg = stackFigures(drawing, isHilly ? [upper, heightPanel(drawing, frame, channels, axis)] : [upper]);

  const formatHeight = (elevation_m: number) =>
    `${threeFigures(inUnit(units.height, elevation_m))} ${units.height.sign}`;
  const formatSpeed = (speed_mps: number) => `${threeFigures(inUnit(units.speed, speed_mps))} ${units.speed.sign}`;
  const behind_s = behind.reduce((sum, each) => sum + each.time_s, 0);
  const firstReason = behind[0] ? heldBackBy(channels, behind[0], column) : "";
  const alt =
    `Speed along the road with ${input.name}: up to ${formatSpeed(reach(channels.speed_mps, n)[1])} driven of ` +
    `${formatSpeed(reach(channels.target_mps, n)[1])} wanted, over ${axis.format(end)}. ` +
    (behind.length === 0
      ? "The car keeps the wanted speed throughout."
      : `Falls behind by more than ${formatSpeed(BEHIND_mps)} for ${threeFigures(behind_s)} s in all, first at ${axis.format(behind[0]?.from ?? 0)}${firstReason && ` (${firstReason})`}.`) +
    (isHilly ? ` The road lies between ${formatHeight(lowest_m)} and ${formatHeight(highest_m)}.` : "");
  nameFigure(svg, alt);

  const position = {
    ...positionAlong(frame, axis.quantity, axis.perShown),
    ...(isHilly ? { to_px: frame.height + HEIGHT_PANEL_PX - BELOW_PX } : {}),
  };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: axis.name, label: axis.label },
        { name: `target_${units.speed.suffix}`, label: `Wanted (${units.speed.sign})` },
        { name: `speed_${units.speed.suffix}`, label: `Driven (${units.speed.sign})` },
        { name: `elevation_${units.height.suffix}`, label: `Height (${units.height.sign})` },
      ],
      get rows() {
        return rows.map((row) => [
          x(row),
          target(row),
          speed(row),
          inUnit(units.height, channels.elevation_m[row] as number),
        ]);
      },
    },
    position,
    read(at) {
      const inside = within(position, at);
      const along = (values: Float64Array) => lineAt(column, values, n, inside);
      return {
        where: axis.format(inside),
        values: [
          { label: "driven", text: formatSpeed(along(channels.speed_mps)) },
          { label: "wanted", text: formatSpeed(along(channels.target_mps)) },
          ...(isHilly ? [{ label: "height", text: formatHeight(along(channels.elevation_m)) }] : []),
        ],
      };
    },
  };
}

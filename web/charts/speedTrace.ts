import { rect, ruleY } from "@observablehq/plot";
import type { Channels } from "../../sim/index.ts";
import { figureColours, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain, reach } from "./parts/axes/domain.ts";
import { type Along, roadAxis } from "./parts/axes/roadAxis.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { drawnColumn } from "./parts/figure/drawnColumn.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { shade } from "./parts/figure/inks.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { stackFigures } from "./parts/figure/stackFigures.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { sayStretches } from "./parts/lines/annotateStretches.ts";
import { endLabels } from "./parts/lines/endLabels.ts";
import { HEIGHT_PANEL_PX, heightPanel } from "./parts/lines/heightPanel.ts";
import { linePath } from "./parts/lines/linePath.ts";
import { straighten, UNSEEN_px } from "./parts/lines/straighten.ts";
import { BEHIND_mps, type Stretch, stretchesBehind } from "./parts/lines/stretchesBehind.ts";
import { thin } from "./parts/lines/thin.ts";

export interface SpeedTraceInput {
  readonly name: string;
  readonly channels: Channels;
  readonly along: Along;
}

const LEFT_PX = 48;
const attainedColour = figureColours[0] ?? ink;

/**
 * Speed asked for and speed attained along a run; stretches in which the car falls behind the trace are shaded and say so
 * in words. Where the road rises and falls its height stands beneath.
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
    right: drawing.width_px - textWidth_px("attained", FONT_PX) - 26,
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
  const attained = straighten(rows, column, channels.speed_mps, unseen_mps);
  const asked = straighten(thin(column, channels.target_mps, n, wide_px), column, channels.target_mps, unseen_mps);
  const inSpeed = (speed_mps: number) => inUnit(units.speed, speed_mps);
  const across = (along: number) => xPixel(frame, axis.shown(along));
  const down = (speed_mps: number) => yPixel(frame, inSpeed(speed_mps));
  const speed = (row: number) => inSpeed(channels.speed_mps[row] as number);
  const target = (row: number) => inSpeed(channels.target_mps[row] as number);
  const behind = stretchesBehind(channels, (end - first) * 0.02, column);
  const noWords = isHilly ? { tickFormat: () => "" } : {};
  const upper = drawFrame(drawing, frame, [
    rect(behind, {
      x1: (each: Stretch) => axis.shown(each.from),
      x2: (each: Stretch) => axis.shown(each.to),
      y1: frame.y[0],
      y2: frame.y[1],
      fill: shade,
      stroke: shade,
    }),
    bottomAxis({ label: isHilly ? null : axis.label, ticks: ticksFor(wide_px), ...noWords }),
    leftAxis({ label: `Speed (${units.speed.sign})`, ticks: 5 }, LEFT_PX),
    linePath(drawnColumn(asked, column, across), drawnColumn(asked, channels.target_mps, down), {
      stroke: inkSoft,
      "stroke-width": 1.2,
      "stroke-dasharray": "2 2",
    }),
    linePath(drawnColumn(attained, column, across), drawnColumn(attained, channels.speed_mps, down), {
      stroke: attainedColour,
      "stroke-width": 1.6,
    }),
    ruleY([0], { stroke: ink }),
  ]);
  const told = behind.map(({ from, to, time_s }) => ({
    from: axis.shown(from),
    to: axis.shown(to),
    words: `behind ${threeFigures(time_s)} s`,
  }));
  sayStretches(upper, frame, told);
  const ends = [
    { lines: ["attained"], x: xPixel(frame, x(n - 1)), y: yPixel(frame, speed(n - 1)), colour: attainedColour },
    { lines: ["target"], x: xPixel(frame, x(n - 1)), y: yPixel(frame, target(n - 1)), colour: inkSoft },
  ];
  endLabels(upper, ends, frame.right + 22, frame.top, frame.bottom + 8);
  const svg = stackFigures(drawing, isHilly ? [upper, heightPanel(drawing, frame, channels, axis)] : [upper]);

  const sayHeight = (elevation_m: number) => `${threeFigures(inUnit(units.height, elevation_m))} ${units.height.sign}`;
  const saySpeed = (speed_mps: number) => `${threeFigures(inUnit(units.speed, speed_mps))} ${units.speed.sign}`;
  const behind_s = behind.reduce((sum, each) => sum + each.time_s, 0);
  const alt =
    `Speed along the road with ${input.name}: up to ${saySpeed(reach(channels.target_mps, n)[1])} asked for, ` +
    `${saySpeed(reach(channels.speed_mps, n)[1])} attained, over ${axis.say(end)}. ` +
    (behind.length === 0
      ? "The car follows the trace throughout."
      : `The car is more than ${saySpeed(BEHIND_mps)} behind for ${threeFigures(behind_s)} s in all, first at ${axis.say(behind[0]?.from ?? 0)}.`) +
    (isHilly ? ` The road lies between ${sayHeight(lowest_m)} and ${sayHeight(highest_m)}.` : "");
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
        { name: `target_${units.speed.suffix}`, label: `Target (${units.speed.sign})` },
        { name: `speed_${units.speed.suffix}`, label: `Attained (${units.speed.sign})` },
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
        where: axis.say(inside),
        values: [
          { label: "target", text: saySpeed(along(channels.target_mps)) },
          { label: "attained", text: saySpeed(along(channels.speed_mps)) },
          ...(isHilly ? [{ label: "height", text: sayHeight(along(channels.elevation_m)) }] : []),
        ],
      };
    },
  };
}

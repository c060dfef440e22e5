import { line } from "@observablehq/plot";
import { ink, paper } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { ledgerFills } from "./parts/figure/inks.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { type EndLabel, endLabels } from "./parts/lines/endLabels.ts";
import { filledBetween } from "./parts/lines/filledBetween.ts";

/** What the road asks of the car at one steady speed. Climbing is negative downhill. */
export interface RoadLoadRow {
  readonly speed_mps: number;
  readonly rolling_N: number;
  readonly aero_N: number;
  /** Hubs and undriven shafts, where they are known apart. */
  readonly drag_N?: number;
  readonly climb_N?: number;
}

const parts = [
  { key: "rolling_N", name: "rolling", fill: ledgerFills.rolling },
  { key: "aero_N", name: "air", fill: ledgerFills.aero },
  { key: "drag_N", name: "hubs and shafts", fill: ledgerFills.driveline },
  { key: "climb_N", name: "gradient", fill: ledgerFills.climb },
] as const;
type Part = (typeof parts)[number];

const LEFT_PX = 52;

/** Force that holds a steady speed, stacked from its parts, against speed. */
export function roadLoad(rows: readonly RoadLoadRow[], drawing: Drawing): Chart {
  if (rows.length === 0) return emptyFigure(drawing, "No road load was worked, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const speed = (row: RoadLoadRow) => inUnit(units.speed, row.speed_mps);
  const force = (row: RoadLoadRow, part: Part) => inUnit(units.force, row[part.key] ?? 0);
  const present = parts.filter((part) => rows.some((row) => (row[part.key] ?? 0) !== 0));
  const total = (row: RoadLoadRow) => present.reduce((sum, part) => sum + force(row, part), 0);
  // What drives the car on downhill lies below zero, the rest above.
  const ends = (row: RoadLoadRow, part: Part): [number, number] => {
    const value = force(row, part);
    const before = present.slice(0, present.indexOf(part)).map((each) => force(row, each));
    const from = before.filter((each) => each * value >= 0).reduce((sum, each) => sum + each, 0);
    return [from, from + value];
  };
  const reachOf = rows.flatMap((row) => present.flatMap((part) => ends(row, part)));
  // Name and force beside each other, or under each other where that would take half of the figure.
  const isNarrow = drawing.width_px < 560;
  const words = ["in all", ...present.map((part) => part.name)].map((name) => (isNarrow ? name : `${name} 0000 N`));
  const height = 300;
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - Math.max(...words.map((word) => textWidth_px(word, FONT_PX))) - 26,
    top: 34,
    bottom: height - BELOW_PX,
    height,
    x: [Math.min(...rows.map(speed)), Math.max(...rows.map(speed))],
    y: domain(Math.min(0, ...reachOf), Math.max(0, ...reachOf), true),
  };
  const spaced: Frame = frame.x[1] > frame.x[0] ? frame : { ...frame, x: [frame.x[0], frame.x[0] + 1] };
  const svg = drawFrame(drawing, spaced, [
    bottomAxis({ label: `Speed (${units.speed.sign})`, ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: `Force (${units.force.sign})`, ticks: 6 }, LEFT_PX),
    present.map((part) =>
      filledBetween(
        rows,
        speed,
        (row) => ends(row, part)[0],
        (row) => ends(row, part)[1],
        { fill: part.fill, stroke: paper, strokeWidth: 0.75 },
      ),
    ),
    line(rows, { x: speed, y: total, stroke: ink, strokeWidth: 1.8 }),
  ]);
  const last = rows.at(-1) as RoadLoadRow;
  const format = (value: number) => `${threeFigures(value)} ${units.force.sign}`;
  const named = (name: string, value: number) => (isNarrow ? [name, format(value)] : [`${name} ${format(value)}`]);
  const x = xPixel(spaced, speed(last));
  const labels = present.map((part): EndLabel => {
    const [from, to] = ends(last, part);
    return { lines: named(part.name, to - from), x, y: yPixel(spaced, (from + to) / 2), colour: ink };
  });
  labels.push({ lines: named("in all", total(last)), x, y: yPixel(spaced, total(last)), colour: ink });
  endLabels(svg, labels, frame.right + 22, frame.top - 16, frame.bottom + 10);

  const whole = (row: RoadLoadRow) =>
    `${format(total(row))} at ${threeFigures(speed(row))} ${units.speed.sign} (${present.map((part) => `${part.name} ${format(force(row, part))}`).join(", ")})`;
  const first = rows[0] as RoadLoadRow;
  const alt = `Force that holds a steady speed: ${first === last ? whole(last) : `from ${whole(first)} to ${whole(last)}`}.`;
  nameFigure(svg, alt);
  const position = positionAlong(spaced, "speed_mps", 1 / units.speed.perBase, 50);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: `speed_${units.speed.suffix}`, label: `Speed (${units.speed.sign})` },
        ...present.map((part) => ({
          name: part.key.replace("_N", `_${units.force.suffix}`),
          label: `${part.name} (${units.force.sign})`,
        })),
        { name: `total_${units.force.suffix}`, label: `in all (${units.force.sign})` },
      ],
      rows: rows.map((row) => [speed(row), ...present.map((part) => force(row, part)), total(row)]),
    },
    position,
    read(at) {
      const shown = inUnit(units.speed, within(position, at));
      const over = (size: (row: RoadLoadRow) => number) =>
        format(lineAt(rows.map(speed), rows.map(size), rows.length, shown));
      return {
        where: `${threeFigures(shown)} ${units.speed.sign}`,
        values: [
          ...present.map((part) => ({ label: part.name, text: over((row) => force(row, part)) })),
          { label: "in all", text: over(total) },
        ],
      };
    },
  };
}

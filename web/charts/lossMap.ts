import { contour, line, ruleY } from "@observablehq/plot";
import { RADPS_PER_RPM } from "../../shared/units.ts";
import { ink, inkSoft } from "../look/tokens.ts";
import { writeWords } from "./annotate.ts";
import { bottomAxis, leftAxis, ticksFor } from "./axes.ts";
import type { Chart, Drawing } from "./chart.ts";
import { contourLabels } from "./contourLabels.ts";
import { FONT_PX } from "./drawPlot.ts";
import { inUnit, METRIC } from "./figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./frame.ts";
import { contourFill } from "./inks.ts";
import { nameFigure } from "./nameFigure.ts";
import { type RegularGrid, regularGrid } from "./regularGrid.ts";
import { textWidth_px } from "./textWidth.ts";
import { threeFigures } from "./threeFigures.ts";
import { type TorqueLine, torqueOn } from "./torqueLine.ts";

export interface LossMapInput {
  readonly name: string;
  readonly speed_rpm: readonly number[];
  readonly torque_Nm: readonly number[];
  /** Rows by speed, columns by torque. */
  readonly loss_W: readonly (readonly number[])[];
  /** Peak torque of the motor in the job, to see whether the map reaches it. */
  readonly envelope?: TorqueLine;
}

const LOSSES_W = [20, 50, 100, 200, 500, 1000, 2000, 3000, 5000, 7500, 10_000, 15_000, 20_000, 30_000, 50_000];
const LEFT_PX = 52;

/** A motor map as it stands in a file: lines of equal loss over speed and torque, with the motor's envelope over it. */
export function lossMap(input: LossMapInput, drawing: Drawing): Chart {
  const { name, speed_rpm, torque_Nm, loss_W, envelope = [] } = input;
  const units = drawing.units ?? METRIC;
  const inTorque = (torque: number) => inUnit(units.torque, torque);
  // The table lies with its rows along torque, as the grid wants them.
  const table = torque_Nm.flatMap((_, j) => loss_W.map((row) => row[j] as number));
  const grid = regularGrid(speed_rpm, torque_Nm, table, 96, 72);
  const levels = LOSSES_W.filter((level) => level > grid.low && level < grid.high);
  const height = Math.round(Math.min(420, Math.max(300, drawing.width_px * 0.55)));
  const most_Nm = Math.max(grid.y2, ...envelope.map((point) => point.torque_Nm));
  const most_rpm = Math.max(grid.x2, ...envelope.map((point) => point.speed_rpm));
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 18,
    top: 34,
    bottom: height - BELOW_PX,
    height,
    x: [0, most_rpm],
    y: [Math.min(0, inTorque(grid.y1)), inTorque(most_Nm) * 1.08],
  };
  const svg = drawFrame(drawing, frame, [
    contour(grid.values, {
      width: grid.columns,
      height: grid.rows,
      x1: grid.x1,
      x2: grid.x2,
      y1: inTorque(grid.y1),
      y2: inTorque(grid.y2),
      thresholds: levels,
      interpolate: "none",
      stroke: inkSoft,
      strokeWidth: 0.8,
      fill: contourFill,
      fillOpacity: 0.1,
    }),
    bottomAxis({ label: "Motor speed (rpm)", ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: `Torque (${units.torque.sign})`, ticks: 6 }, LEFT_PX),
    ruleY([0], { stroke: ink }),
    line(envelope, {
      x: "speed_rpm",
      y: (point: TorqueLine[number]) => inTorque(point.torque_Nm),
      stroke: ink,
      strokeWidth: 1.8,
      strokeDasharray: "7 3",
    }),
  ]);
  const labels = contourLabels(
    grid,
    levels,
    {
      x: (rpm) => xPixel(frame, rpm),
      y: (torque) => yPixel(frame, inTorque(torque)),
      width: (level) => textWidth_px(sayLoss(level), 11),
    },
    (_, torque) => torque > 0.15 * grid.y2 && torque < 0.95 * grid.y2,
  );
  for (const { x, y, level } of labels) {
    const text = { lines: [sayLoss(level)], anchor: "middle" as const, fill: inkSoft, fontSize_px: 11, isHaloed: true };
    writeWords(svg, { x, y, ...text });
  }
  if (envelope.length > 0) {
    const words = "broken line: peak torque of the motor in the job";
    const isRoomy = textWidth_px(words, FONT_PX) < frame.right - frame.left - 12;
    const lines = [isRoomy ? words : "broken line: peak torque"];
    writeWords(svg, { x: frame.right - 6, y: frame.top + 8, lines, anchor: "end", fill: ink, isHaloed: true });
  }
  const best = bestPoint(speed_rpm, torque_Nm, loss_W);
  const say = (torque: number) => `${threeFigures(inTorque(torque))} ${units.torque.sign}`;
  const alt =
    `Loss of motor and controller by ${name}, up to ${threeFigures(grid.x2)} rpm and ${say(grid.y2)}: from ` +
    `${threeFigures(grid.low)} W to ${threeFigures(grid.high)} W. It is most efficient at ${threeFigures(best.speed_rpm)} rpm ` +
    `and ${say(best.torque_Nm)}, with ${threeFigures(100 * best.efficiency_frac)} %.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "motorSpeed_rpm", label: "Motor speed (rpm)" },
        { name: `torque_${units.torque.suffix}`, label: `Torque (${units.torque.sign})` },
        { name: "loss_W", label: "Loss (W)" },
      ],
      rows: speed_rpm.flatMap((speed, i) =>
        torque_Nm.map((torque, j) => [speed, inTorque(torque), loss_W[i]?.[j] ?? 0]),
      ),
    },
    position,
    read(at) {
      const rpm = within(position, at);
      return {
        where: `${threeFigures(rpm)} rpm`,
        values: [
          ...[0.25, 0.5, 1].map((part) => ({
            label: `loss at ${say(part * grid.y2)}`,
            text: `${threeFigures(lossIn(grid, rpm, part * grid.y2))} W`,
          })),
          ...(envelope.length > 0 ? [{ label: "peak torque", text: say(torqueOn(envelope, rpm)) }] : []),
        ],
      };
    },
  };
}

function sayLoss(loss_W: number): string {
  return loss_W >= 1000 ? `${loss_W / 1000} kW` : `${loss_W} W`;
}

/** The value of the grid's field that a point lies in, the nearest one beyond its edges. */
function lossIn(grid: RegularGrid, speed: number, torque: number): number {
  const place = (at: number, from: number, to: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.floor(((at - from) / (to - from)) * count)));
  const column = place(speed, grid.x1, grid.x2, grid.columns);
  return grid.values[place(torque, grid.y1, grid.y2, grid.rows) * grid.columns + column] ?? 0;
}

/** The node with the highest efficiency when driving. */
function bestPoint(speed_rpm: readonly number[], torque_Nm: readonly number[], loss_W: LossMapInput["loss_W"]) {
  let best = { speed_rpm: 0, torque_Nm: 0, efficiency_frac: 0 };
  speed_rpm.forEach((speed, i) => {
    torque_Nm.forEach((torque, j) => {
      const shaft_W = torque * speed * RADPS_PER_RPM;
      if (shaft_W <= 0) return;
      const efficiency_frac = shaft_W / (shaft_W + (loss_W[i]?.[j] ?? 0));
      if (efficiency_frac > best.efficiency_frac) best = { speed_rpm: speed, torque_Nm: torque, efficiency_frac };
    });
  });
  return best;
}

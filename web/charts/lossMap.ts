import { line, ruleY } from "@observablehq/plot";
import { RADPS_PER_RPM } from "../../shared/units.ts";
import { ink } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { motorContours } from "./parts/motorGround/motorContours.ts";
import type { RegularGrid } from "./parts/motorGround/regularGrid.ts";
import { type TorqueLine, torqueOn } from "./parts/motorGround/torqueLine.ts";
import { torqueShown } from "./parts/motorGround/torqueShown.ts";

export interface LossMapInput {
  readonly name: string;
  readonly speed_rpm: readonly number[];
  readonly torque_Nm: readonly number[];
  /** Rows by speed, columns by torque. */
  readonly loss_W: readonly (readonly number[])[];
  /** Peak torque of the motor in the job, to see whether the map reaches it. */
  readonly envelope?: TorqueLine;
}

const LEFT_PX = 52;

/** A motor map as it stands in a file: lines of equal loss over speed and torque, with the motor's envelope over it. */
export function lossMap(input: LossMapInput, drawing: Drawing): Chart {
  const { name, speed_rpm, torque_Nm, loss_W, envelope = [] } = input;
  const torque = torqueShown(drawing.units ?? METRIC);
  // The table lies with its rows along torque, as the contours want them.
  const values = torque_Nm.flatMap((_, j) => loss_W.map((row) => row[j] as number));
  const contours = motorContours("loss", { speed_rpm, torque_Nm, values }, torque);
  const { grid } = contours;
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
    y: [Math.min(0, torque.of(grid.y1)), torque.of(most_Nm) * 1.08],
  };
  const svg = drawFrame(drawing, frame, [
    contours.mark,
    bottomAxis({ label: "Motor speed (rpm)", ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: torque.label, ticks: 6 }, LEFT_PX),
    ruleY([0], { stroke: ink }),
    line(envelope, { ...torque.place, stroke: ink, strokeWidth: 1.8, strokeDasharray: "7 3" }),
  ]);
  contours.writeNumbers(svg, frame, (_, at_Nm) => at_Nm > 0.15 * grid.y2 && at_Nm < 0.95 * grid.y2);
  if (envelope.length > 0) {
    const words = "broken line: peak torque of the motor in the job";
    const isRoomy = textWidth_px(words, FONT_PX) < frame.right - frame.left - 12;
    const lines = [isRoomy ? words : "broken line: peak torque"];
    writeWords(svg, { x: frame.right - 6, y: frame.top + 8, lines, anchor: "end", fill: ink, isHaloed: true });
  }
  const best = bestPoint(speed_rpm, torque_Nm, loss_W);
  const alt =
    `Loss of motor and controller by ${name}, up to ${threeFigures(grid.x2)} rpm and ${torque.format(grid.y2)}: from ` +
    `${threeFigures(grid.low)} W to ${threeFigures(grid.high)} W. It is most efficient at ${threeFigures(best.speed_rpm)} rpm ` +
    `and ${torque.format(best.torque_Nm)}, with ${threeFigures(100 * best.efficiency_frac)} %.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "motorSpeed_rpm", label: "Motor speed (rpm)" },
        torque.column,
        { name: "loss_W", label: "Loss (W)" },
      ],
      rows: speed_rpm.flatMap((speed, i) =>
        torque_Nm.map((each_Nm, j) => [speed, torque.of(each_Nm), loss_W[i]?.[j] ?? 0]),
      ),
    },
    position,
    read(at) {
      const rpm = within(position, at);
      return {
        where: `${threeFigures(rpm)} rpm`,
        values: [
          ...[0.25, 0.5, 1].map((part) => ({
            label: `loss at ${torque.format(part * grid.y2)}`,
            text: `${threeFigures(lossIn(grid, rpm, part * grid.y2))} W`,
          })),
          ...(envelope.length > 0 ? [{ label: "peak torque", text: torque.format(torqueOn(envelope, rpm)) }] : []),
        ],
      };
    },
  };
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

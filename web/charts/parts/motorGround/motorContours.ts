import { contour, type Markish } from "@observablehq/plot";
import { inkSoft } from "../../../look/tokens.ts";
import { writeWords } from "../figure/annotate.ts";
import { type Frame, xPixel, yPixel } from "../figure/frame.ts";
import { contourFill } from "../figure/inks.ts";
import { textWidth_px } from "../figure/textWidth.ts";
import { contourLabels } from "./contourLabels.ts";
import { type RegularGrid, regularGrid } from "./regularGrid.ts";
import type { TorqueShown } from "./torqueShown.ts";

/** What contours over motor speed and torque show. */
export type ContourKind = "loss" | "efficiency";

const levelsOf: Readonly<Record<ContourKind, readonly number[]>> = {
  loss: [20, 50, 100, 200, 500, 1000, 2000, 3000, 5000, 7500, 10_000, 15_000, 20_000, 30_000, 50_000], // W
  efficiency: [70, 80, 85, 90, 92, 94, 96], // percent
};
const NUMBER_PX = 11;

export interface MotorContours {
  readonly grid: RegularGrid;
  readonly mark: Markish;
  /** Writes each contour's number on it, where `isInside` (rpm, Nm) allows one. */
  writeNumbers(svg: SVGSVGElement, frame: Frame, isInside: (speed_rpm: number, torque_Nm: number) => boolean): void;
}

/** Contours of a table over motor speed and torque (rows by torque), in watts or percent, from `least` of these upward. */
export function motorContours(
  kind: ContourKind,
  table: {
    readonly speed_rpm: ArrayLike<number>;
    readonly torque_Nm: ArrayLike<number>;
    readonly values: ArrayLike<number>;
  },
  torque: TorqueShown,
  least = 0,
): MotorContours {
  const grid = regularGrid(table.speed_rpm, table.torque_Nm, table.values, 96, 72);
  const levels = levelsOf[kind].filter((level) => level >= least && level > grid.low && level < grid.high);
  const mark = contour(grid.values, {
    width: grid.columns,
    height: grid.rows,
    x1: grid.x1,
    x2: grid.x2,
    y1: torque.of(grid.y1),
    y2: torque.of(grid.y2),
    thresholds: levels,
    interpolate: "none", // the fields are whole already; looking each of them up again would cost most of the drawing
    stroke: inkSoft,
    strokeWidth: 0.8,
    strokeOpacity: 0.75,
    fill: contourFill,
    fillOpacity: 0.1,
    clip: true,
  });
  const format = (level: number) => (kind === "loss" ? formatLoss(level) : `${level} %`);
  return {
    grid,
    mark,
    writeNumbers(svg, frame, isInside) {
      const pixel = {
        x: (speed_rpm: number) => xPixel(frame, speed_rpm),
        y: (torque_Nm: number) => yPixel(frame, torque.of(torque_Nm)),
        width: (level: number) => textWidth_px(format(level), NUMBER_PX),
      };
      for (const { x, y, level } of contourLabels(grid, levels, pixel, isInside)) {
        writeWords(svg, {
          x,
          y,
          lines: [format(level)],
          anchor: "middle",
          fill: inkSoft,
          fontSize_px: NUMBER_PX,
          isHaloed: true,
        });
      }
    },
  };
}

function formatLoss(loss_W: number): string {
  return loss_W >= 1000 ? `${loss_W / 1000} kW` : `${loss_W} W`;
}

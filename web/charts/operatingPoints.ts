import { extent, max } from "d3-array";
import type { Channels } from "../../sim/index.ts";
import { highlight, ink, inkSoft } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import { drawDots, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { type MotorGroundInput, motorGround } from "./parts/motorGround/motorGround.ts";
import { operatingPointsInWords } from "./parts/motorGround/operatingPointsInWords.ts";
import { timeByPoint } from "./parts/motorGround/timeByPoint.ts";
import { peakOf, torqueOn } from "./parts/motorGround/torqueLine.ts";
import { torqueShown } from "./parts/motorGround/torqueShown.ts";

export interface OperatingPointsInput extends MotorGroundInput {
  readonly name: string;
  readonly index: number;
  readonly channels: Channels;
}

const LEFT_PX = 52;
const MOST_DOTS = 3000;

/**
 * Where the motor works: its speed and torque over a run, the area of each dot in proportion to the time spent there, over
 * contours of its loss (or efficiency) within the torque envelope, with every limit that holds it back.
 */
export function operatingPoints(input: OperatingPointsInput, drawing: Drawing): Chart {
  const { map, gear } = input;
  const units = drawing.units ?? METRIC;
  const torque = torqueShown(units);
  const ground = motorGround(input, drawing);
  const { driving, overrun } = ground;
  const points = timeByPoint(input.channels, map.maxSpeed_rpm, peakOf(driving).torque_Nm);
  const most_s = max(points, (point) => point.time_s) ?? 0;

  const [low_Nm = 0, high_Nm = 0] = extent([...driving, ...overrun, ...points], (each) => each.torque_Nm);
  const most_rpm = Math.max(map.maxSpeed_rpm, max([...driving, ...points], (each) => each.speed_rpm) ?? 0) || 1;
  const right = drawing.width_px - 18;
  const top = ground.top_px;
  const bottom = top + Math.round(Math.min(400, Math.max(270, drawing.width_px * 0.5)));
  const height = bottom + BELOW_PX;
  const y = domain(torque.of(low_Nm), torque.of(high_Nm) * 1.06, true);
  const frame: Frame = { left: LEFT_PX, right, top, bottom, height, x: [0, most_rpm], y };
  const svg = ground.draw(frame);
  const most_px = Math.min(9, Math.max(5, drawing.width_px / 80));
  const dots = points
    // The largest lie lowest, so that none hides another; beyond some thousands the shortest would only slow the page.
    .toSorted((a, b) => b.time_s - a.time_s)
    .slice(0, MOST_DOTS)
    .map((point) => ({
      x: xPixel(frame, point.speed_rpm),
      y: yPixel(frame, torque.of(point.torque_Nm)),
      r: 1 + most_px * Math.sqrt(point.time_s / most_s),
    }));
  drawDots(svg, dots, {
    fill: highlight,
    "fill-opacity": 0.6,
    stroke: ink,
    "stroke-opacity": 0.6,
    "stroke-width": 0.5,
  });
  ground.write(
    svg,
    frame,
    dots.slice(0, 150).map(({ x, y, r }) => ({ left: x - r, right: x + r, top: y - r, bottom: y + r })),
  );
  writeWords(svg, {
    x: right - 6,
    y: bottom - 12,
    lines: [`lines: ${input.contours}; largest dot: ${threeFigures(most_s)} s`],
    anchor: "end",
    fill: inkSoft,
    isItalic: true,
    isHaloed: true,
  });

  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  const alt = operatingPointsInWords(input, points, driving, torque.format);
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "motorSpeed_rpm", label: "Motor speed (rpm)" },
        torque.column,
        { name: "time_s", label: "Time there (s)" },
      ],
      rows: points.map((point) => [point.speed_rpm, torque.place.y(point), point.time_s]),
    },
    position,
    read(at) {
      const rpm = within(position, at);
      const near = points.filter((point) => Math.abs(point.speed_rpm - rpm) <= most_rpm / 100);
      const time_s = near.reduce((sum, point) => sum + point.time_s, 0);
      const longest = near.reduce<(typeof near)[number] | undefined>(
        (a, b) => (a && a.time_s >= b.time_s ? a : b),
        undefined,
      );
      const road = gear
        ? [
            {
              label: `road speed in ${gear.name}`,
              text: `${threeFigures(inUnit(units.speed, rpm * gear.speedPerRpm_mps))} ${units.speed.sign}`,
            },
          ]
        : [];
      return {
        where: `${threeFigures(rpm)} rpm`,
        values: [
          ...road,
          { label: "time near this speed", text: `${threeFigures(time_s)} s` },
          ...(longest ? [{ label: "longest at", text: torque.format(longest.torque_Nm) }] : []),
          { label: "motor", text: torque.format(torqueOn(driving, rpm)) },
          ...map.limits.map((limit) => ({ label: limit.name, text: torque.format(torqueOn(limit.points, rpm)) })),
        ],
      };
    },
  };
}

import { areaY, contour, dot, line, ruleY } from "@observablehq/plot";
import { extent, max } from "d3-array";
import type { Channels, MotorSurface } from "../../sim/index.ts";
import { heed, ink, inkSoft, paper } from "../look/tokens.ts";
import { writeWords } from "./annotate.ts";
import { bottomAxis, leftAxis, ticksFor } from "./axes.ts";
import type { Chart, Drawing } from "./chart.ts";
import { contourLabels } from "./contourLabels.ts";
import { distinctLimits } from "./distinctLimits.ts";
import { domain } from "./domain.ts";
import { inUnit, METRIC } from "./figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./frame.ts";
import { contourFill } from "./inks.ts";
import { lineKey } from "./lineKey.ts";
import { nameFigure } from "./nameFigure.ts";
import { operatingPointsInWords } from "./operatingPointsInWords.ts";
import { packStyle } from "./packStyle.ts";
import { regularGrid } from "./regularGrid.ts";
import { type GearForScale, roadSpeedAxis } from "./roadSpeedAxis.ts";
import { textWidth_px } from "./textWidth.ts";
import { threeFigures } from "./threeFigures.ts";
import { type TimedPoint, timeByPoint } from "./timeByPoint.ts";
import { peakOf, torqueOn } from "./torqueLine.ts";

export interface OperatingPointsInput {
  readonly name: string;
  readonly index: number;
  readonly channels: Channels;
  readonly map: MotorSurface;
  /** What the contours show. */
  readonly contours: "loss" | "efficiency";
  /** Road speed at one motor turn a minute in the gear that is asked about, for a second scale above. */
  readonly gear?: GearForScale;
}

const LOSSES_W = [50, 100, 200, 500, 1000, 2000, 3000, 5000, 7500, 10_000, 15_000, 20_000, 30_000, 50_000];
const EFFICIENCIES_percent = [70, 80, 85, 90, 92, 94, 96];
const LEFT_PX = 52;
// Below the label of the vertical scale, which Plot puts at the very top.
const KEY_TOP_PX = 20;
const limitDashes = ["6 3", "2 3", "10 3 2 3", "1 4"];

/**
 * Where the motor works: its speed and torque over a run, the area of each dot in proportion to the time spent there, over
 * contours of its loss (or efficiency) within the torque envelope, with every limit that holds it back.
 */
export function operatingPoints(input: OperatingPointsInput, drawing: Drawing): Chart {
  const { map, gear } = input;
  const units = drawing.units ?? METRIC;
  const inTorque = (torque_Nm: number) => inUnit(units.torque, torque_Nm);
  const driving = map.envelope.filter((point) => point.torque_Nm >= 0);
  const given = map.envelope.filter((point) => point.torque_Nm < 0);
  // An envelope told for driving only holds for the overrun too.
  const overrun = given.length > 0 ? given : driving.map((each) => ({ ...each, torque_Nm: -each.torque_Nm }));
  const points = timeByPoint(input.channels, map.maxSpeed_rpm, peakOf(driving).torque_Nm);
  const most_s = max(points, (point) => point.time_s) ?? 0;

  const [low_Nm = 0, high_Nm = 0] = extent([...driving, ...overrun, ...points], (each) => each.torque_Nm);
  const yDomain = domain(inTorque(low_Nm), inTorque(high_Nm) * 1.06, true);
  const most_rpm = Math.max(map.maxSpeed_rpm, max([...driving, ...points], (each) => each.speed_rpm) ?? 0) || 1;
  const right = drawing.width_px - 18;
  const limits = distinctLimits(map.limits).map((limit, i) => ({
    ...limit,
    style: { stroke: heed, strokeWidth: 1.4, strokeDasharray: limitDashes[i % limitDashes.length] as string },
  }));
  const key = lineKey(
    [{ name: "envelope", points: driving, style: { stroke: ink, strokeWidth: 1.8 } }, ...limits].map((each) => ({
      words: `${sayTorque(peakOf(each.points).torque_Nm)} ${each.name}`,
      style: each.style,
    })),
    6,
    drawing.width_px - 12,
  );
  const top = KEY_TOP_PX + key.height_px + (gear ? 50 : 12);
  const bottom = top + Math.round(Math.min(400, Math.max(270, drawing.width_px * 0.5)));
  const height = bottom + BELOW_PX;
  const frame: Frame = { left: LEFT_PX, right, top, bottom, height, x: [0, most_rpm], y: yDomain };

  const isLoss = input.contours === "loss";
  const values = isLoss ? map.loss_W : map.efficiency_frac.map((value) => value * 100);
  const grid = regularGrid(map.speed_rpm, map.torque_Nm, values, 96, 72);
  const levels = (isLoss ? LOSSES_W : EFFICIENCIES_percent).filter((level) => level > grid.low && level < grid.high);
  const most_px = Math.min(9, Math.max(5, drawing.width_px / 80));
  const ticks = ticksFor(right - LEFT_PX);
  const outline = { x: "speed_rpm", y: (each: { torque_Nm: number }) => inTorque(each.torque_Nm) };
  const svg = drawFrame(
    drawing,
    frame,
    [
      contour(grid.values, {
        width: grid.columns,
        height: grid.rows,
        x1: grid.x1,
        x2: grid.x2,
        y1: inTorque(grid.y1),
        y2: inTorque(grid.y2),
        thresholds: levels,
        interpolate: "none", // the fields are whole already; looking each of them up again would cost most of the drawing
        stroke: inkSoft,
        strokeWidth: 0.8,
        strokeOpacity: 0.75,
        fill: contourFill,
        fillOpacity: 0.1,
        clip: true,
      }),
      // Paper over what the motor cannot reach, so that contours end at the envelope.
      areaY(driving, { x: "speed_rpm", y1: outline.y, y2: yDomain[1], fill: paper }),
      areaY(overrun, { x: "speed_rpm", y1: yDomain[0], y2: outline.y, fill: paper }),
      bottomAxis({ label: "Motor speed (rpm)", ticks }),
      leftAxis({ label: `Torque (${units.torque.sign})`, ticks: 7 }, LEFT_PX),
      gear ? roadSpeedAxis(gear, most_rpm, units, ticks) : null,
      ruleY([0], { stroke: ink }),
      line(driving, { ...outline, stroke: ink, strokeWidth: 1.8 }),
      line(overrun, { ...outline, stroke: ink, strokeWidth: 1.8 }),
      limits.map(({ points: each, style }) => line(each, { ...outline, ...style })),
      key.marks(frame, KEY_TOP_PX),
      dot(points, {
        ...outline,
        r: (point: TimedPoint) => 1 + most_px * Math.sqrt(point.time_s / most_s),
        fill: packStyle(input.index).colour,
        fillOpacity: 0.6,
        // A rim of ink, for light pack colours on the darker contours.
        stroke: ink,
        strokeOpacity: 0.6,
        strokeWidth: 0.5,
      }),
    ],
    { r: { type: "identity" } },
  );

  const sayLevel = isLoss ? sayLoss : (value: number) => `${value} %`;
  // Contours of loss run across the zero line, those of efficiency along it.
  const lowest_Nm = peakOf(driving).torque_Nm * (isLoss ? 0.3 : 0.08);
  const labels = contourLabels(
    grid,
    levels,
    { x: (rpm) => xPixel(frame, rpm), y: torquePixel, width: (level) => textWidth_px(sayLevel(level), 11) },
    (speed_rpm, torque_Nm) => torque_Nm > lowest_Nm && torque_Nm < torqueOn(driving, speed_rpm) * 0.92,
  );
  for (const { x, y, level } of labels) {
    writeWords(svg, {
      x,
      y,
      lines: [sayLevel(level)],
      anchor: "middle",
      fill: inkSoft,
      fontSize_px: 11,
      isHaloed: true,
    });
  }
  key.writeNames(svg, KEY_TOP_PX);
  const ground = `lines: ${isLoss ? "loss" : "efficiency"}; largest dot: ${threeFigures(most_s)} s`;
  writeWords(svg, {
    x: right - 6,
    y: bottom - 12,
    lines: [ground],
    anchor: "end",
    fill: inkSoft,
    isItalic: true,
    isHaloed: true,
  });

  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  const alt = operatingPointsInWords(input, points, driving, sayTorque);
  nameFigure(svg, alt);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "motorSpeed_rpm", label: "Motor speed (rpm)" },
        { name: `torque_${units.torque.suffix}`, label: `Torque (${units.torque.sign})` },
        { name: "time_s", label: "Time there (s)" },
      ],
      rows: points.map((point) => [point.speed_rpm, inTorque(point.torque_Nm), point.time_s]),
    },
    position,
    read(at) {
      const rpm = within(position, at);
      const near = points.filter((point) => Math.abs(point.speed_rpm - rpm) <= most_rpm / 100);
      const time_s = near.reduce((sum, point) => sum + point.time_s, 0);
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
          { label: "envelope", text: sayTorque(torqueOn(driving, rpm)) },
          ...map.limits.map((limit) => ({ label: limit.name, text: sayTorque(torqueOn(limit.points, rpm)) })),
        ],
      };
    },
  };

  function torquePixel(torque_Nm: number): number {
    return yPixel(frame, inTorque(torque_Nm));
  }

  function sayTorque(torque_Nm: number): string {
    return `${threeFigures(inTorque(torque_Nm))} ${units.torque.sign}`;
  }
}

function sayLoss(loss_W: number): string {
  return loss_W >= 1000 ? `${loss_W / 1000} kW` : `${loss_W} W`;
}

import { line, ruleY } from "@observablehq/plot";
import type { MotorSurface } from "../../../../sim/index.ts";
import { heed, ink, paper } from "../../../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import { type GearForScale, roadSpeedAxis } from "../axes/roadSpeedAxis.ts";
import type { Drawing } from "../figure/chart.ts";
import { type FigureUnits, METRIC } from "../figure/figureUnits.ts";
import { drawFrame, type Frame, xPixel, yPixel } from "../figure/frame.ts";
import { filledBetween } from "../lines/filledBetween.ts";
import { type Box, type PlacedLabel, placeLabels } from "../lines/placeLabels.ts";
import { distinctLimits } from "./distinctLimits.ts";
import { type ContourKind, motorContours } from "./motorContours.ts";
import { peakOf, type TorqueLine, torqueOn } from "./torqueLine.ts";
import { torqueShown } from "./torqueShown.ts";

export interface MotorGroundInput {
  readonly map: MotorSurface;
  readonly contours: ContourKind;
  /** Road speed at one motor turn a minute in the gear that is asked about, for a second scale above. */
  readonly gear?: GearForScale;
}

/** What a motor can do, on which points of its work are drawn. */
export interface MotorGround {
  readonly driving: TorqueLine;
  readonly overrun: TorqueLine;
  /** Room above a frame for the key and for the scale of road speed. */
  readonly top_px: number;
  /** Contours within the envelope, limits and scales: a drawing of the caller's own, copied while the frame stays. */
  draw(frame: Frame): SVGSVGElement;
  /** The numbers of the contours, and each limit named at its line, clear of the points where there is room. */
  write(svg: SVGSVGElement, frame: Frame, points?: readonly Box[]): void;
}

// Lines of still less loss crowd together near standstill.
const LEAST_LOSS_W = 50;
const limitDashes = ["6 3", "2 3", "10 3 2 3", "1 4"];

/** The last ground of each map: a change of load moves the points only, and contours take longer than all the rest. */
const kept = new WeakMap<MotorSurface, { readonly asked: string; readonly document: Document; ground: MotorGround }>();

/** What a motor can do over its speed and torque, to be drawn in frames. */
export function motorGround(input: MotorGroundInput, drawing: Drawing): MotorGround {
  const asked = JSON.stringify([input.contours, input.gear, drawing.units, drawing.width_px]);
  const before = kept.get(input.map);
  if (before?.asked === asked && before.document === drawing.document) return before.ground;
  const ground = makeGround(input, drawing);
  kept.set(input.map, { asked, document: drawing.document, ground });
  return ground;
}

function makeGround(input: MotorGroundInput, drawing: Drawing): MotorGround {
  const { map, gear } = input;
  const units = drawing.units ?? METRIC;
  const torque = torqueShown(units);
  const driving = map.envelope.filter((point) => point.torque_Nm >= 0);
  const given = map.envelope.filter((point) => point.torque_Nm < 0);
  // An envelope told for driving only holds for the overrun too.
  const overrun = given.length > 0 ? given : driving.map((each) => ({ ...each, torque_Nm: -each.torque_Nm }));
  const limits = limitLines(map);
  const contours = contoursOf(input, units);
  const draw = (frame: Frame) => {
    const ticks = ticksFor(frame.right - frame.left);
    return drawFrame(drawing, frame, [
      contours.mark,
      // Paper over what the motor cannot reach, so that contours end at the envelope.
      filledBetween(driving, rpmOf, torque.place.y, () => frame.y[1], { fill: paper }),
      filledBetween(overrun, rpmOf, () => frame.y[0], torque.place.y, { fill: paper }),
      bottomAxis({ label: "Motor speed (rpm)", ticks }),
      leftAxis({ label: torque.label, ticks: 7 }, frame.left),
      gear ? roadSpeedAxis(gear, frame.x[1], units, ticks) : null,
      ruleY([0], { stroke: ink }),
      line(driving, { ...torque.place, stroke: ink, strokeWidth: 1.8 }),
      line(overrun, { ...torque.place, stroke: ink, strokeWidth: 1.8 }),
      limits.map(({ points, style }) => line(points, { ...torque.place, ...style })),
    ]);
  };
  let last: { readonly frame: string; readonly svg: SVGSVGElement } | undefined;
  return {
    driving,
    overrun,
    top_px: gear ? 76 : 40,
    draw(frame) {
      const named = JSON.stringify(frame);
      if (last?.frame !== named) last = { frame: named, svg: draw(frame) };
      return last.svg.cloneNode(true) as SVGSVGElement;
    },
    write(svg, frame, points = []) {
      const lines = [
        { name: "motor", points: driving, colour: ink },
        ...limits.map((each) => ({ ...each, colour: heed })),
      ];
      const space = {
        left: frame.left + 2,
        right: drawing.width_px - 2,
        top: frame.top - 22,
        bottom: frame.bottom - 4,
      };
      const labels = lines.map(
        ({ name, points: each, colour }): PlacedLabel => ({
          // Of a limit that falls with speed its highest torque says nothing, unless it is the motor's own.
          words: name === "motor" || isLevel(each) ? `${name} ${torque.format(peakOf(each).torque_Nm)}` : name,
          colour,
          places: placesAlong(each, frame, torque.of),
        }),
      );
      const boxes = placeLabels(svg, labels, space, points);
      // Contours of loss run across the zero line, those of efficiency along it.
      const lowest_Nm = peakOf(driving).torque_Nm * (input.contours === "loss" ? 0.3 : 0.08);
      const isClear = (x: number, y: number) =>
        boxes.every(
          ({ left, right, top, bottom }) => x < left - 26 || x > right + 26 || y < top - 12 || y > bottom + 12,
        );
      contours.writeNumbers(
        svg,
        frame,
        (speed_rpm, torque_Nm) =>
          torque_Nm > lowest_Nm &&
          torque_Nm < torqueOn(driving, speed_rpm) * 0.92 &&
          isClear(xPixel(frame, speed_rpm), yPixel(frame, torque.of(torque_Nm))),
      );
    },
  };
}

function contoursOf({ map, contours }: MotorGroundInput, units: FigureUnits) {
  const values = contours === "loss" ? map.loss_W : map.efficiency_frac.map((value) => value * 100);
  return motorContours(contours, { ...map, values }, torqueShown(units), contours === "loss" ? LEAST_LOSS_W : 0);
}

function limitLines(map: MotorSurface) {
  return distinctLimits(map.limits).map((limit, i) => ({
    ...limit,
    style: { stroke: heed, strokeWidth: 1.4, strokeDasharray: limitDashes[i % limitDashes.length] as string },
  }));
}

/** Places for a label along a line: above it from its right end to its left, then beneath it. */
function placesAlong(points: TorqueLine, frame: Frame, shown: (torque_Nm: number) => number): PlacedLabel["places"] {
  const last_rpm = points.at(-1)?.speed_rpm ?? 0;
  const first_rpm = points[0]?.speed_rpm ?? 0;
  return [-9, 12].flatMap((off_px) =>
    [0.98, 0.8, 0.6, 0.4, 0.02].map((share) => {
      const speed_rpm = first_rpm + share * (last_rpm - first_rpm);
      const anchor = share > 0.9 ? "end" : share < 0.1 ? "start" : "middle";
      return {
        x: xPixel(frame, speed_rpm),
        y: yPixel(frame, shown(torqueOn(points, speed_rpm))) + off_px,
        anchor,
      } as const;
    }),
  );
}

function isLevel(points: TorqueLine): boolean {
  const most_Nm = peakOf(points).torque_Nm;
  return points.every(({ torque_Nm }) => most_Nm - torque_Nm < 0.5);
}

function rpmOf({ speed_rpm }: TorqueLine[number]): number {
  return speed_rpm;
}

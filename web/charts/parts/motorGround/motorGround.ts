import { line, ruleY } from "@observablehq/plot";
import type { MotorSurface } from "../../../../sim/index.ts";
import { heed, ink, paper } from "../../../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import { type GearForScale, roadSpeedAxis } from "../axes/roadSpeedAxis.ts";
import type { Drawing } from "../figure/chart.ts";
import { type FigureUnits, METRIC } from "../figure/figureUnits.ts";
import { drawFrame, type Frame } from "../figure/frame.ts";
import { type LineKey, lineKey } from "../keys/lineKey.ts";
import { filledBetween } from "../lines/filledBetween.ts";
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
  /** The numbers of the contours and the names of the limits, which lie over the points. */
  write(svg: SVGSVGElement, frame: Frame): void;
}

// Below the label of the vertical scale, which Plot puts at the very top.
const KEY_TOP_PX = 20;
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
  const key = keyOf(driving, limits, units, drawing.width_px);
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
      key.marks(frame, KEY_TOP_PX),
    ]);
  };
  let last: { readonly frame: string; readonly svg: SVGSVGElement } | undefined;
  return {
    driving,
    overrun,
    top_px: KEY_TOP_PX + key.height_px + (gear ? 50 : 12),
    draw(frame) {
      const named = JSON.stringify(frame);
      if (last?.frame !== named) last = { frame: named, svg: draw(frame) };
      return last.svg.cloneNode(true) as SVGSVGElement;
    },
    write(svg, frame) {
      // Contours of loss run across the zero line, those of efficiency along it.
      const lowest_Nm = peakOf(driving).torque_Nm * (input.contours === "loss" ? 0.3 : 0.08);
      contours.writeNumbers(
        svg,
        frame,
        (speed_rpm, torque_Nm) => torque_Nm > lowest_Nm && torque_Nm < torqueOn(driving, speed_rpm) * 0.92,
      );
      key.writeNames(svg, KEY_TOP_PX);
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

function keyOf(
  driving: TorqueLine,
  limits: ReturnType<typeof limitLines>,
  units: FigureUnits,
  width_px: number,
): LineKey {
  const { say } = torqueShown(units);
  const lines = [{ name: "envelope", points: driving, style: { stroke: ink, strokeWidth: 1.8 } }, ...limits];
  return lineKey(
    lines.map((each) => ({ words: `${say(peakOf(each.points).torque_Nm)} ${each.name}`, style: each.style })),
    6,
    width_px - 12,
  );
}

function rpmOf({ speed_rpm }: TorqueLine[number]): number {
  return speed_rpm;
}

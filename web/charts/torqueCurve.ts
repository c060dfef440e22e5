import { line } from "@observablehq/plot";
import { RADPS_PER_RPM } from "../../shared/units.ts";
import { figureColours, ink } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { textWidth_px } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { peakOf, type TorqueLine, torqueOn } from "./parts/motorGround/torqueLine.ts";
import { torqueShown } from "./parts/motorGround/torqueShown.ts";

export interface TorqueCurveInput {
  readonly motor: { readonly name: string; readonly points: TorqueLine };
  /** The engine that came out, where its curve is known. */
  readonly engine?: { readonly name: string; readonly points: TorqueLine };
}

const LEFT_PX = 52;

/** Torque over shaft speed: the motor's whole line beside the dashed one of the engine that came out. */
export function torqueCurve(input: TorqueCurveInput, drawing: Drawing): Chart {
  const curves = [
    { ...input.motor, colour: figureColours[0] ?? ink, dash: undefined },
    ...(input.engine ? [{ ...input.engine, colour: figureColours[1] ?? ink, dash: "7 3" }] : []),
  ].filter((curve) => curve.points.length > 0);
  if (curves.length === 0) return emptyFigure(drawing, "No torque is known of this motor, so no curve is shown.");
  const units = drawing.units ?? METRIC;
  const torque = torqueShown(units);
  const points = curves.flatMap((curve) => curve.points);
  const height = 320;
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 18,
    top: 34,
    bottom: height - BELOW_PX,
    height,
    x: [0, Math.max(...points.map((point) => point.speed_rpm)) || 1],
    y: domain(Math.min(0, ...points.map(torque.place.y)), Math.max(...points.map(torque.place.y)) * 1.1, true),
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: "Shaft speed (rpm)", ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: torque.label, ticks: 6 }, LEFT_PX),
    curves.map(({ points: each, colour, dash }) =>
      line(each, {
        ...torque.place,
        stroke: colour,
        strokeWidth: 2,
        ...(dash ? { strokeDasharray: dash } : {}),
      }),
    ),
  ]);
  for (const { name, points: each, colour } of curves) nameCurve(name, each, colour);
  const power = (point: TorqueLine[number]) => point.torque_Nm * point.speed_rpm * RADPS_PER_RPM;
  const sayPower = (power_W: number) => `${threeFigures(inUnit(units.power, power_W))} ${units.power.sign}`;
  const alt = `Torque over shaft speed: ${curves
    .map(({ name, points: each }) => {
      const peak = peakOf(each);
      const strongest = each.reduce((a, b) => (power(b) > power(a) ? b : a));
      return (
        `${name} gives at most ${torque.say(peak.torque_Nm)}, from ${threeFigures(peak.speed_rpm)} rpm, and ${sayPower(power(strongest))} ` +
        `at ${threeFigures(strongest.speed_rpm)} rpm, and turns up to ${threeFigures(each.at(-1)?.speed_rpm ?? 0)} rpm`
      );
    })
    .join("; ")}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  return {
    svg,
    alt,
    table: {
      columns: [{ name: "curve", label: "Curve" }, { name: "speed_rpm", label: "Shaft speed (rpm)" }, torque.column],
      rows: curves.flatMap(({ name, points: each }) =>
        each.map((point) => [name, point.speed_rpm, torque.of(point.torque_Nm)]),
      ),
    },
    position,
    read(at) {
      const speed_rpm = within(position, at);
      return {
        where: `${threeFigures(speed_rpm)} rpm`,
        values: curves.map(({ name, points: each }) => {
          const torque_Nm = torqueOn(each, speed_rpm);
          return { label: name, text: `${torque.say(torque_Nm)}, ${sayPower(power({ speed_rpm, torque_Nm }))}` };
        }),
      };
    },
  };

  /** Beside the curve's end where there is room, otherwise above its last part. */
  function nameCurve(name: string, points: TorqueLine, colour: string): void {
    const end = points.at(-1);
    if (!end) return;
    const x = xPixel(frame, end.speed_rpm);
    const width = textWidth_px(name, FONT_PX);
    const common = { lines: [name], fill: colour, isHaloed: true };
    if (x + width + 8 < frame.right) {
      writeWords(svg, { ...common, x: x + 7, y: yPixel(frame, torque.of(end.torque_Nm)) });
      return;
    }
    const from_rpm = end.speed_rpm * (1 - width / (x - frame.left));
    const under = points.filter((point) => point.speed_rpm >= from_rpm).map((point) => point.torque_Nm);
    const highest_Nm = Math.max(...under, torqueOn(points, from_rpm));
    writeWords(svg, { ...common, x: x - 2, y: yPixel(frame, torque.of(highest_Nm)) - 11, anchor: "end" });
  }
}

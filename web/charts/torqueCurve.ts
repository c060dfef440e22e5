import { line, ruleY } from "@observablehq/plot";
import { RADPS_PER_RPM } from "../../shared/units.ts";
import { greys, highlight, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { type PlacedLabel, placeLabels } from "./parts/lines/placeLabels.ts";
import { peakOf, type TorqueLine, torqueOn } from "./parts/motorGround/torqueLine.ts";
import { torqueShown } from "./parts/motorGround/torqueShown.ts";

export interface TorqueCurveInput {
  /** What the motor itself gives. */
  readonly motor: TorqueLine;
  /** What the controller lets through of it. */
  readonly asSet: TorqueLine;
  /** What the old gearbox takes at its input. */
  readonly gearboxInput_Nm?: number;
  /** The engine that came out, where its curve is known. */
  readonly engine?: TorqueLine;
}

const LEFT_PX = 52;
const grey = greys[1] ?? inkSoft;

/** Torque at the gearbox input over its speed: the motor as set, beside the motor alone, the gearbox's limit and the old engine. */
export function torqueCurve(input: TorqueCurveInput, drawing: Drawing): Chart {
  const { motor, asSet, gearboxInput_Nm, engine = [] } = input;
  if (motor.length === 0) return emptyFigure(drawing, "No torque is known of this motor, so no curve is shown.");
  const units = drawing.units ?? METRIC;
  const torque = torqueShown(units);
  const isHeld = asSet.some(({ speed_rpm, torque_Nm }) => torqueOn(motor, speed_rpm) - torque_Nm > 0.5);
  const curves = [
    ...(isHeld ? [{ name: "motor alone", points: motor, colour: grey, dash: "2 3", width: 1.4 }] : []),
    ...(engine.length > 0 ? [{ name: "old engine", points: engine, colour: grey, dash: undefined, width: 1.4 }] : []),
    { name: isHeld ? "motor as set" : "motor", points: asSet, colour: highlight, dash: undefined, width: 2.4 },
  ];
  const points = [...motor, ...engine];
  const height = 300;
  const most_Nm = Math.max(gearboxInput_Nm ?? 0, ...points.map(({ torque_Nm }) => torque_Nm));
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 22,
    top: 40,
    bottom: height - BELOW_PX,
    height,
    x: [0, Math.max(...points.map(({ speed_rpm }) => speed_rpm)) || 1],
    y: domain(0, torque.of(most_Nm) * 1.15, true),
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: "Motor speed (rpm)", ticks: ticksFor(frame.right - frame.left) }),
    leftAxis({ label: `Torque at the gearbox input (${units.torque.sign})`, ticks: 6 }, LEFT_PX),
    gearboxInput_Nm === undefined
      ? null
      : ruleY([torque.of(gearboxInput_Nm)], { stroke: ink, strokeWidth: 1.4, strokeDasharray: "7 4" }),
    curves.map(({ points: each, colour, dash, width }) =>
      line(each, {
        ...torque.place,
        stroke: colour,
        strokeWidth: width,
        ...(dash ? { strokeDasharray: dash } : {}),
      }),
    ),
  ]);
  placeLabels(svg, labels(), { left: 4, right: drawing.width_px - 4, top: 14, bottom: frame.bottom - 4 });

  const power_W = ({ speed_rpm, torque_Nm }: TorqueLine[number]) => torque_Nm * speed_rpm * RADPS_PER_RPM;
  const formatPower = (value_W: number) => `${threeFigures(inUnit(units.power, value_W))} ${units.power.sign}`;
  const described = curves.toReversed().map(({ name, points: each }) => {
    const peak = peakOf(each);
    const strongest = each.reduce((a, b) => (power_W(b) > power_W(a) ? b : a));
    return `${name} gives at most ${torque.format(peak.torque_Nm)}, from ${threeFigures(peak.speed_rpm)} rpm, and ${formatPower(power_W(strongest))} at ${threeFigures(strongest.speed_rpm)} rpm`;
  });
  const limit = gearboxInput_Nm === undefined ? "" : ` The gearbox input limit is ${torque.format(gearboxInput_Nm)}.`;
  const alt = `Torque at the gearbox input over motor speed: ${described.join("; ")}.${limit}`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "motorSpeed_rpm", 1, 50);
  return {
    svg,
    alt,
    table: {
      columns: [{ name: "curve", label: "Curve" }, { name: "speed_rpm", label: "Motor speed (rpm)" }, torque.column],
      rows: curves.flatMap(({ name, points: each }) =>
        each.map((point) => [name, point.speed_rpm, torque.of(point.torque_Nm)]),
      ),
    },
    position,
    read(at) {
      const speed_rpm = within(position, at);
      return {
        where: `${threeFigures(speed_rpm)} rpm`,
        values: curves.toReversed().map(({ name, points: each }) => {
          const torque_Nm = torqueOn(each, speed_rpm);
          return {
            label: name,
            text: `${torque.format(torque_Nm)}, ${formatPower(power_W({ speed_rpm, torque_Nm }))}`,
          };
        }),
      };
    },
  };

  /** At the lines: the limit above its right end, the motor where it falls, the engine under its peak. */
  function labels(): readonly PlacedLabel[] {
    const above = (speed_rpm: number, torque_Nm: number, anchor: "start" | "middle" | "end") => ({
      x: xPixel(frame, speed_rpm),
      y: yPixel(frame, torque.of(torque_Nm)) - 10,
      anchor,
    });
    const top_rpm = frame.x[1];
    const found: PlacedLabel[] = [];
    if (gearboxInput_Nm !== undefined) {
      const words = `gearbox input limit ${torque.format(gearboxInput_Nm)}`;
      found.push({ words, colour: ink, places: [above(top_rpm, gearboxInput_Nm, "end")] });
    }
    for (const { name, points: each, colour } of curves.toReversed()) {
      const peak = peakOf(each);
      const words = `${name} ${torque.format(peak.torque_Nm)}`;
      const at = (share: number, anchor: "start" | "middle", off_px = 0) => {
        const place = above(share * top_rpm, torqueOn(each, share * top_rpm) || peak.torque_Nm, anchor);
        return { ...place, x: place.x + (anchor === "start" ? 8 : 0), y: place.y + off_px };
      };
      const overPeak = above(peak.speed_rpm, peak.torque_Nm, "middle");
      const underPeak = { ...overPeak, y: overPeak.y + 27 };
      const places =
        name === "old engine"
          ? [{ ...underPeak, y: underPeak.y + 12 }, overPeak, underPeak]
          : colour === highlight
            ? [
                ...[0.72, 0.62, 0.82, 0.5].map((share) => at(share, "start")),
                at(0.02, "start", 26),
                at(0.3, "start", 26),
              ]
            : [at(0.01, "start"), at(0.01, "start", -13)];
      found.push({ words, colour, places });
    }
    return found;
  }
}

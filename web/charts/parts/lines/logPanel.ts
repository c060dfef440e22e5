import { line, rect, ruleY } from "@observablehq/plot";
import { highlight, ink, inkSoft } from "../../../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import { domain, reach } from "../axes/domain.ts";
import type { RoadAxis } from "../axes/roadAxis.ts";
import type { Drawing } from "../figure/chart.ts";
import { type FigureUnit, inUnit } from "../figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame } from "../figure/frame.ts";
import { shade } from "../figure/inks.ts";
import type { Repair } from "./repairsOf.ts";
import { thin } from "./thin.ts";

/** A log as it came or as it was cleaned; time never falls. A raw value that was missing is NaN and leaves a gap. */
export interface LogColumns {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly elevation_m?: Float64Array;
}

export interface LogPanelInput {
  readonly raw: LogColumns;
  readonly cleaned: LogColumns;
  readonly key: "speed_mps" | "elevation_m";
  readonly label: string;
  readonly unit: FigureUnit;
  readonly axis: RoadAxis;
  readonly x: [number, number];
  readonly repairs: readonly Repair[];
  readonly isLast: boolean;
}

/** One column of a log over time: as recorded, thin, under what the cleaning made of it; repairs shaded. */
export function logPanel(drawing: Drawing, input: LogPanelInput): { svg: SVGSVGElement; frame: Frame } {
  const { axis, unit, label, isLast } = input;
  const lines = [
    { log: input.raw, stroke: inkSoft, strokeWidth: 0.9, strokeOpacity: 0.8 },
    { log: input.cleaned, stroke: highlight, strokeWidth: 1.6, strokeOpacity: 1 },
  ].flatMap(({ log, ...style }) => {
    const values = log[input.key];
    return values ? [{ time_s: log.time_s, values, style }] : [];
  });
  const known = lines.flatMap(({ values }) => {
    // No number compares with a gap (NaN), so that reach passes over it; all gaps reach from infinity.
    const [low, high] = reach(values, values.length);
    return low <= high && Number.isFinite(high - low) ? [[low, high] as const] : [];
  });
  // A log of nothing but gaps has no reach; its frame then shows an empty scale.
  const low = inUnit(unit, Math.min(...(known.length > 0 ? known.map(([value]) => value) : [0])));
  const high = inUnit(unit, Math.max(...(known.length > 0 ? known.map(([, value]) => value) : [0])));
  const top = input.key === "speed_mps" ? 46 : 30;
  const bottom = top + (input.key === "speed_mps" ? 170 : 80);
  const height = bottom + (isLast ? BELOW_PX : 16);
  const y = domain(low, high, input.key === "speed_mps");
  const frame: Frame = { left: LEFT_PX, right: drawing.width_px - 18, top, bottom, height, x: input.x, y };
  const wide_px = Math.round(frame.right - LEFT_PX);
  const noWords = isLast ? {} : { tickFormat: () => "" };
  const svg = drawFrame(drawing, frame, [
    rect(input.repairs, {
      x1: (each: Repair) => axis.shown(each.from_s),
      x2: (each: Repair) => axis.shown(each.to_s),
      y1: frame.y[0],
      y2: frame.y[1],
      fill: shade,
      stroke: shade,
    }),
    bottomAxis({ label: isLast ? axis.label : null, ticks: ticksFor(wide_px), ...noWords }),
    leftAxis({ label: `${label} (${unit.sign}): thin as recorded, thick cleaned`, ticks: 4 }, LEFT_PX),
    lines.map(({ time_s, values, style }) =>
      line(thin(time_s, values, time_s.length, wide_px), {
        x: (row: number) => axis.shown(time_s[row] as number),
        y: (row: number) => inUnit(unit, values[row] as number),
        ...style,
      }),
    ),
    ruleY([frame.y[0]], { stroke: ink }),
  ]);
  return { svg, frame };
}

const LEFT_PX = 52;

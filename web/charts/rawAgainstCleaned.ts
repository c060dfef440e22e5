import { lineY, rectY, ruleY } from "@observablehq/plot";
import { figureColours, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./axes.ts";
import type { Chart, Drawing } from "./chart.ts";
import { lineAt } from "./columnAt.ts";
import { domain, reach } from "./domain.ts";
import { emptyFigure } from "./emptyFigure.ts";
import { type FigureUnit, inUnit, METRIC } from "./figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within } from "./frame.ts";
import { shade } from "./inks.ts";
import { nameFigure } from "./nameFigure.ts";
import { type RoadAxis, roadAxis } from "./roadAxis.ts";
import { sayStretches } from "./sayStretches.ts";
import { stackFigures } from "./stackFigures.ts";
import { thin } from "./thin.ts";
import { threeFigures } from "./threeFigures.ts";

/** A log as it came or as it was cleaned; time never falls. A raw value that was missing is NaN and leaves a gap. */
export interface LogColumns {
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly elevation_m?: Float64Array;
}

export interface RawAgainstCleanedInput {
  readonly raw: LogColumns;
  /** `isRepaired[i]` is 1 where the cleaning changed or filled sample i. */
  readonly cleaned: LogColumns & { readonly isRepaired: Uint8Array };
}

interface Repair {
  readonly from_s: number;
  readonly to_s: number;
}

const LEFT_PX = 52;

/** A recorded speed (and height, where it has one) as it came, thin, under what the cleaning made of it; repairs are shaded. */
export function rawAgainstCleaned({ raw, cleaned }: RawAgainstCleanedInput, drawing: Drawing): Chart {
  const n = cleaned.time_s.length;
  if (n === 0 && raw.time_s.length === 0)
    return emptyFigure(drawing, "The log holds no sample, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const ends = [raw.time_s, cleaned.time_s].filter((time) => time.length > 0).map((time) => reach(time, time.length));
  const first = Math.min(...ends.map(([low]) => low));
  const last = Math.max(...ends.map(([, high]) => high));
  const axis = roadAxis("time", last, units);
  const repairs = repairsOf(cleaned, (last - first) * 0.005);
  const hasHeight = raw.elevation_m !== undefined || cleaned.elevation_m !== undefined;
  const x: [number, number] = [axis.shown(first), last > first ? axis.shown(last) : axis.shown(first) + 1];
  const panels = [
    panel(drawing, {
      raw,
      cleaned,
      key: "speed_mps",
      label: "Speed",
      unit: units.speed,
      axis,
      x,
      repairs,
      isLast: !hasHeight,
    }),
    ...(hasHeight
      ? [
          panel(drawing, {
            raw,
            cleaned,
            key: "elevation_m",
            label: "Height",
            unit: units.height,
            axis,
            x,
            repairs,
            isLast: true,
          }),
        ]
      : []),
  ];
  const svg = stackFigures(
    drawing,
    panels.map((each) => each.svg),
  );
  if (panels[0]) {
    const told = repairs.map(({ from_s, to_s }) => ({
      from: axis.shown(from_s),
      to: axis.shown(to_s),
      words: `repaired ${threeFigures(to_s - from_s)} s`,
    }));
    sayStretches(panels[0].svg, panels[0].frame, told);
  }
  const repaired_s = repairs.reduce((sum, each) => sum + each.to_s - each.from_s, 0);
  const alt =
    `Speed as recorded (${raw.time_s.length} samples) and as cleaned over ${axis.say(last - first)}: ` +
    (repairs.length === 0
      ? "nothing was repaired."
      : `${repairs.length} ${repairs.length === 1 ? "stretch" : "stretches"} repaired, ${threeFigures(repaired_s)} s in all, first at ${axis.say(repairs[0]?.from_s ?? 0)}.`);
  nameFigure(svg, alt);
  const frame = panels[0]?.frame as Frame;
  const position = {
    ...positionAlong(frame, "time_s", axis.perShown),
    ...(hasHeight ? { to_px: frame.height + (panels[1]?.frame.bottom ?? 0) } : {}),
  };
  const rows = thin(cleaned.time_s, cleaned.speed_mps, n, Math.round(frame.right - LEFT_PX));
  const speed = (mps: number) => inUnit(units.speed, mps);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: axis.name, label: axis.label },
        { name: `raw_${units.speed.suffix}`, label: `As recorded (${units.speed.sign})` },
        { name: `cleaned_${units.speed.suffix}`, label: `Cleaned (${units.speed.sign})` },
        { name: "repaired", label: "Repaired" },
      ],
      rows: rows.map((row) => {
        const at = cleaned.time_s[row] as number;
        const recorded = speed(lineAt(raw.time_s, raw.speed_mps, raw.time_s.length, at));
        return [
          axis.shown(at),
          Number.isFinite(recorded) ? recorded : "",
          speed(cleaned.speed_mps[row] as number),
          cleaned.isRepaired[row] ? "yes" : "no",
        ];
      }),
    },
    position,
    read(at) {
      const inside = within(position, at);
      const say = (log: LogColumns) => {
        const value = lineAt(log.time_s, log.speed_mps, log.time_s.length, inside);
        return Number.isFinite(value) ? `${threeFigures(speed(value))} ${units.speed.sign}` : "nothing recorded";
      };
      return {
        where: axis.say(inside),
        values: [
          { label: "as recorded", text: say(raw) },
          { label: "cleaned", text: say(cleaned) },
        ],
      };
    },
  };
}

interface PanelInput extends RawAgainstCleanedInput {
  readonly key: "speed_mps" | "elevation_m";
  readonly label: string;
  readonly unit: FigureUnit;
  readonly axis: RoadAxis;
  readonly x: [number, number];
  readonly repairs: readonly Repair[];
  readonly isLast: boolean;
}

function panel(drawing: Drawing, input: PanelInput): { svg: SVGSVGElement; frame: Frame } {
  const { axis, unit, label, isLast } = input;
  const lines = [
    { log: input.raw, stroke: inkSoft, strokeWidth: 0.9, strokeOpacity: 0.8 },
    { log: input.cleaned, stroke: figureColours[0] ?? ink, strokeWidth: 1.6, strokeOpacity: 1 },
  ].flatMap(({ log, ...style }) => {
    const values = log[input.key];
    return values ? [{ time_s: log.time_s, values, style }] : [];
  });
  const known = lines.flatMap(({ values }) => {
    const finite = values.filter((value) => Number.isFinite(value));
    return finite.length > 0 ? [reach(finite, finite.length)] : [];
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
    rectY(input.repairs, {
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
      lineY(thin(time_s, values, time_s.length, wide_px), {
        x: (row: number) => axis.shown(time_s[row] as number),
        y: (row: number) => inUnit(unit, values[row] as number),
        ...style,
      }),
    ),
    ruleY([frame.y[0]], { stroke: ink }),
  ]);
  return { svg, frame };
}

function repairsOf({ time_s, isRepaired }: RawAgainstCleanedInput["cleaned"], gap_s: number): Repair[] {
  const found: { from_s: number; to_s: number }[] = [];
  for (let i = 0; i < time_s.length; i++) {
    if (!isRepaired[i]) continue;
    const from_s = time_s[Math.max(0, i - 1)] as number;
    const to_s = time_s[i] as number;
    const last = found.at(-1);
    if (last && from_s - last.to_s <= gap_s) last.to_s = to_s;
    else found.push({ from_s, to_s });
  }
  return found;
}

import { ruleY } from "@observablehq/plot";
import type { HeatLine } from "../../sim/index.ts";
import { greys, heed, highlight, ink } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import { roadAxis } from "./parts/axes/roadAxis.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { positionAlong, within, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import type { PackStyle } from "./parts/figure/packStyle.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** Temperatures from which motor and pack give less; absent where not known. */
export interface HeatFrom {
  readonly motor_K?: number;
  readonly pack_K?: number;
}

/** One thing of one course, in the unit shown. */
interface Along {
  readonly name: string;
  readonly course: HeatLine["name"];
  readonly time_s: readonly number[];
  readonly values: readonly number[];
}

const TOP_PX = 34;
const PLOT_PX = 240;

/** How warm motor and pack get on road and hill, each again and again, below what makes them give less. */
export function heatAlong(courses: readonly HeatLine[], from: HeatFrom, drawing: Drawing): Chart {
  const unit = (drawing.units ?? METRIC).temperature;
  const shown = (values_K: readonly number[]) => values_K.map((each_K) => inUnit(unit, each_K));
  const along = courses.flatMap(({ name: course, time_s, motor_K, pack_K }): Along[] => [
    ...(motor_K ? [{ name: `motor, ${whereOf(course)}`, course, time_s, values: shown(motor_K) }] : []),
    ...(pack_K ? [{ name: `pack, ${whereOf(course)}`, course, time_s, values: shown(pack_K) }] : []),
  ]);
  const limits = [
    ...(from.motor_K === undefined ? [] : [{ what: "motor", at: inUnit(unit, from.motor_K) }]),
    ...(from.pack_K === undefined ? [] : [{ what: "pack", at: inUnit(unit, from.pack_K) }]),
  ].map(({ what, at }) => ({ at, words: `${what} gives less from ${Math.round(at)} ${unit.sign}` }));
  return drawn(
    along,
    limits,
    { sign: unit.sign, name: `temperature_${unit.suffix}`, label: `Temperature (${unit.sign})` },
    drawing,
  );
}

/** What of the maker's continuous power the half hour before each moment takes, where that is all that is known of the motor's heat. */
export function ratedAlong(courses: readonly HeatLine[], drawing: Drawing): Chart {
  const along = courses.flatMap(({ name: course, time_s, rated_frac }): Along[] =>
    rated_frac ? [{ name: whereOf(course), course, time_s, values: rated_frac.map((frac) => 100 * frac) }] : [],
  );
  const limits = [{ at: 100, words: "continuous rating: 100 %" }];
  return drawn(
    along,
    limits,
    { sign: "%", name: "rated_percent", label: "Share of the continuous rating (%)" },
    drawing,
  );
}

function drawn(
  along: readonly Along[],
  limits: readonly { readonly at: number; readonly words: string }[],
  { sign, name, label }: { readonly sign: string; readonly name: string; readonly label: string },
  drawing: Drawing,
): Chart {
  const end_s = Math.max(0, ...along.map(({ time_s }) => time_s.at(-1) ?? 0));
  if (end_s === 0)
    return emptyFigure(drawing, "Nothing is known of how motor or pack warm, so there is nothing to draw.");
  // Road and hill are driven over and over, so a moment here is none of the drive by which other figures are read.
  const axis = roadAxis("time", end_s, drawing.units, "Time on end");
  const all = [...along.flatMap(({ values }) => values), ...limits.map(({ at }) => at)];
  const y = domain(Math.min(...all), Math.max(...all), sign === "%");
  const { svg, frame } = namedLines(drawing, {
    lines: along.map(({ name: line, time_s, values }, i) => ({
      name: line,
      style: styleOf(along, i),
      points: time_s.map((at_s, k) => ({ x: axis.shown(at_s), y: values[k] as number })),
    })),
    xLabel: axis.label,
    yLabel: label,
    x: [0, axis.shown(end_s)],
    y,
    top_px: TOP_PX,
    plotHeight_px: PLOT_PX,
    isDotted: false,
    marksBelow: [
      ruleY(
        limits.map(({ at }) => at),
        { stroke: heed, strokeWidth: 1.2 },
      ),
    ],
  });
  // All lines begin at one point on the left, and names lead off on the right below the limits: the words stand over their line.
  for (const { at, words } of limits)
    writeWords(svg, {
      x: frame.right - 6,
      y: yPixel(frame, at) - 9,
      lines: [words],
      fill: heed,
      anchor: "end",
      isHaloed: true,
    });
  const most = ({ values }: Along) => `${Math.round(Math.max(...values))} ${sign}`;
  const alt = `${along.map((each) => `${each.name}: up to ${most(each)}`).join("; ")}; ${limits.map(({ words }) => words).join("; ")}.`;
  nameFigure(svg, alt);
  const position = { ...positionAlong(frame, "again_s", axis.perShown), from_px: TOP_PX };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "line", label: "Line" },
        { name: axis.name, label: axis.label },
        { name, label },
      ],
      rows: along.flatMap(({ name: line, time_s, values }) =>
        time_s.map((at_s, k) => [line, axis.shown(at_s), Math.round(10 * (values[k] as number)) / 10]),
      ),
    },
    position,
    read(at) {
      const inside = within(position, at);
      return {
        where: axis.format(inside),
        values: along.map(({ name: line, time_s, values }) => ({
          label: line,
          // A course that has ended by then is read at no moment of it.
          text:
            inside > (time_s.at(-1) ?? 0)
              ? "ended"
              : `${Math.round(lineAt(time_s, values, time_s.length, inside))} ${sign}`,
        })),
      };
    },
  };
}

const dashes = ["8 3", "2 3", "10 3 2 3"] as const;

/** The one that comes hottest in the highlight and whole, the others grey and dashed. */
function styleOf(along: readonly Along[], index: number): PackStyle {
  const peaks = along.map(({ values }) => Math.max(...values));
  const hottest = peaks.indexOf(Math.max(...peaks));
  if (index === hottest) return { colour: highlight, dash: undefined, symbol: "circle", width_px: 2.4 };
  const others = along.map((_, i) => i).filter((i) => i !== hottest);
  const k = others.indexOf(index);
  const symbols = ["square", "triangle", "diamond"] as const;
  return { colour: greys[k] ?? ink, dash: dashes[k], symbol: symbols[k] ?? "square", width_px: 1.6 };
}

function whereOf(course: HeatLine["name"]): string {
  return course === "road" ? "this road" : "long hill";
}

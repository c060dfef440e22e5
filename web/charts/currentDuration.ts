import { ruleY } from "@observablehq/plot";
import { toFigures } from "../../shared/quantity/toFigures.ts";
import { highlight, ink, inkSoft } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { positionAlong, within, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** The currents of one drive by how long they last, rising in duration. */
export interface DurationLine {
  readonly name: string;
  readonly points: readonly { readonly duration_s: number; readonly battery_A: number }[];
}

export interface CurrentDurationInput {
  readonly lines: readonly DurationLine[];
  /** What the pack gives for hours, by its sheet, and the fuse to begin with. */
  readonly continuous_A: number;
  readonly fuse_A: number;
}

const TICKS_s = [1, 10, 60, 600];
const styles = [
  { colour: highlight, dash: undefined, symbol: "circle", width_px: 2.4 },
  { colour: ink, dash: "8 3", symbol: "square", width_px: 1.6 },
] as const;

/** Battery current over how long it lasts, on a scale of equal ratios: what a fuse, a cable and a pack feel. */
export function currentDuration({ lines, continuous_A, fuse_A }: CurrentDurationInput, drawing: Drawing): Chart {
  const all = lines.flatMap(({ points }) => points);
  const most_A = Math.max(0, ...all.map(({ battery_A }) => battery_A));
  if (most_A === 0) return emptyFigure(drawing, "No current is drawn on this road, so there is no curve to show.");
  const at = (duration_s: number) => Math.log10(duration_s);
  const { svg, frame } = namedLines(drawing, {
    lines: lines.map(({ name, points }, i) => ({
      name,
      style: styles[i % styles.length] ?? styles[0],
      points: points.map(({ duration_s, battery_A }) => ({ x: at(duration_s), y: battery_A })),
    })),
    xLabel: "Lasting, at the most",
    xTicks: { ticks: TICKS_s.map(at), tickFormat: (value) => lasting(10 ** value) },
    yLabel: "Battery current, root mean square (A)",
    x: [at(1), at(600)],
    y: domain(0, 1.1 * Math.max(most_A, fuse_A, continuous_A), true),
    top_px: 34,
    plotHeight_px: 240,
    isDotted: true,
    marksBelow: [
      ruleY([fuse_A], { stroke: ink, strokeDasharray: "7 4" }),
      ruleY([continuous_A], { stroke: inkSoft, strokeDasharray: "2 3" }),
    ],
  });
  const rules = [
    { words: `fuse ${threeFigures(fuse_A)} A`, value_A: fuse_A },
    { words: `pack for hours ${threeFigures(continuous_A)} A`, value_A: continuous_A },
  ].sort((a, b) => b.value_A - a.value_A);
  for (const [i, { words, value_A }] of rules.entries()) {
    writeWords(svg, {
      x: frame.left + 6,
      y: yPixel(frame, value_A) + (i === 0 ? -8 : 12),
      lines: [words],
      fill: i === 0 ? ink : inkSoft,
      isHaloed: true,
    });
  }
  const described = lines.map(({ name, points }) => {
    const shown = points.filter(({ duration_s }) => TICKS_s.includes(duration_s));
    return `${name}: ${shown.map(({ duration_s, battery_A }) => `${threeFigures(battery_A)} A over ${lasting(duration_s)}`).join(", ")}`;
  });
  const alt = `Battery current by how long it lasts. ${described.join("; ")}. The fuse to begin with is ${threeFigures(fuse_A)} A, and the pack gives ${threeFigures(continuous_A)} A for hours.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "logDuration", 1, 40);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "drive", label: "Drive" },
        { name: "duration_s", label: "Duration (s)" },
        { name: "battery_A", label: "Battery current, root mean square (A)" },
      ],
      rows: lines.flatMap(({ name, points }) =>
        points.map(({ duration_s, battery_A }) => [name, duration_s, battery_A]),
      ),
    },
    position,
    read(place) {
      const value = within(position, place);
      return {
        where: lasting(10 ** value),
        values: lines.map(({ name, points }) => {
          const [x, y] = [points.map(({ duration_s }) => at(duration_s)), points.map(({ battery_A }) => battery_A)];
          return { label: name, text: `${threeFigures(lineAt(x, y, x.length, value))} A` };
        }),
      };
    },
  };
}

/** A duration in words: 10 s, 10 min. */
function lasting(duration_s: number): string {
  const rounded_s = toFigures(duration_s, 2);
  return rounded_s < 120 ? `${threeFigures(rounded_s)} s` : `${threeFigures(toFigures(rounded_s / 60, 2))} min`;
}

import { greys, highlight, inkSoft } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { positionAlong, within } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** A start from rest, in even steps. */
export interface StartLine {
  readonly name: string;
  readonly time_s: ArrayLike<number>;
  readonly speed_mps: ArrayLike<number>;
}

/** What is shown of a start. */
const SHOWN_s = 60;
const EACH_s = 0.5;
const styles = [
  { colour: highlight, dash: undefined, symbol: "circle", width_px: 2.4 },
  { colour: greys[1] ?? inkSoft, dash: "8 3", symbol: "square", width_px: 1.6 },
] as const;

/** Speed over time from rest at full throttle: the car with its motor, and with the engine that came out. */
export function standingStarts(starts: readonly StartLine[], drawing: Drawing): Chart {
  const units = drawing.units ?? METRIC;
  const lines = starts.map(({ name, time_s, speed_mps }, i) => ({
    name,
    style: styles[i % styles.length] ?? styles[0],
    points: Array.from({ length: SHOWN_s / EACH_s + 1 }, (_, k) => {
      const speed = lineAt(time_s, speed_mps, time_s.length, k * EACH_s);
      return { x: k * EACH_s, y: inUnit(units.speed, speed) };
    }),
  }));
  const most = Math.max(1, ...lines.flatMap(({ points }) => points.map(({ y }) => y)));
  const { svg, frame } = namedLines(drawing, {
    lines,
    xLabel: "Time from rest (s)",
    yLabel: `Speed (${units.speed.sign})`,
    x: [0, SHOWN_s],
    y: domain(0, most, true),
    top_px: 34,
    plotHeight_px: 220,
    isDotted: false,
  });
  const shown = (value: number) => `${threeFigures(value)} ${units.speed.sign}`;
  const described = lines.map(({ name, points }) => {
    const reached = [10, 20, SHOWN_s].map((at_s) => `${shown(points[at_s / EACH_s]?.y ?? 0)} after ${at_s} s`);
    return `${name} ${reached.join(", ")}`;
  });
  const alt = `Speed over time from rest at full throttle: ${described.join("; ")}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, "startTime_s", 1, 60);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "car", label: "Car" },
        { name: "time_s", label: "Time from rest (s)" },
        { name: `speed_${units.speed.suffix}`, label: `Speed (${units.speed.sign})` },
      ],
      rows: lines.flatMap(({ name, points }) => points.map(({ x, y }) => [name, x, y])),
    },
    position,
    read(place) {
      const at_s = within(position, place);
      return {
        where: `${at_s.toFixed(1)} s`,
        values: lines.map(({ name, points }) => {
          const [x, y] = [points.map((point) => point.x), points.map((point) => point.y)];
          return { label: name, text: shown(lineAt(x, y, x.length, at_s)) };
        }),
      };
    },
  };
}

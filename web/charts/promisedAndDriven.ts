import { J_PER_KWH } from "../../shared/units.ts";
import type { MeasuredLines } from "../../sim/index.ts";
import { greys, highlight, ink } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import { roadAxis } from "./parts/axes/roadAxis.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { positionAlong, within } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

const PLOT_PX = 250;
const TOP_PX = 34;
/** Points of a line as drawn: a pixel wide and no finer. */
const POINTS = 300;

/** Energy drawn from the pack since the start of a logged drive: as logged, as predicted, as corrected, over one scale. */
export function promisedAndDriven(lines: MeasuredLines, drawing: Drawing): Chart {
  const { time_s } = lines;
  const n = time_s.length;
  if (n < 2) return emptyFigure(drawing, "Nothing was driven in this log, so there is nothing to compare.");
  const sums = summed_kWh(lines);
  const end_s = time_s[n - 1] as number;
  const axis = roadAxis("time", end_s, drawing.units);
  const every = Math.max(1, Math.floor(n / POINTS));
  const rows = Array.from({ length: Math.ceil(n / every) }, (_, k) => Math.min(n - 1, k * every));
  if (rows[rows.length - 1] !== n - 1) rows.push(n - 1);
  const named = [
    { name: "logged", values: sums.logged, style: { colour: ink, dash: undefined, symbol: "circle", width_px: 2.4 } },
    {
      name: "predicted",
      values: sums.predicted,
      style: { colour: greys[1] ?? ink, dash: "8 3", symbol: "square", width_px: 1.6 },
    },
    {
      name: "corrected",
      values: sums.corrected,
      style: { colour: highlight, dash: "2 3", symbol: "triangle", width_px: 1.8 },
    },
  ] as const;
  const highest = Math.max(...named.flatMap(({ values }) => rows.map((row) => values[row] as number)), 0.1);
  const lowest = Math.min(...named.flatMap(({ values }) => rows.map((row) => values[row] as number)), 0);
  const { svg, frame } = namedLines(drawing, {
    lines: named.map(({ name, values, style }) => ({
      name,
      style,
      points: rows.map((row) => ({ x: axis.shown(time_s[row] as number), y: values[row] as number })),
    })),
    xLabel: axis.label,
    yLabel: "Drawn from the pack (kWh)",
    x: [0, axis.shown(end_s)],
    y: domain(lowest, highest, true),
    top_px: TOP_PX,
    plotHeight_px: PLOT_PX,
    isDotted: false,
  });
  const last = (values: Float64Array) => `${threeFigures(values[n - 1] as number)} kWh`;
  const alt = `Energy drawn from the pack over the drive of ${axis.format(end_s)}: ${last(sums.logged)} logged, ${last(sums.predicted)} predicted, ${last(sums.corrected)} as corrected.`;
  nameFigure(svg, alt);
  const position = { ...positionAlong(frame, axis.quantity, axis.perShown), from_px: TOP_PX };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: axis.name, label: axis.label },
        ...named.map(({ name }) => ({ name: `${name}_kWh`, label: `${name} (kWh)` })),
      ],
      rows: rows.map((row) => [axis.shown(time_s[row] as number), ...named.map(({ values }) => values[row] as number)]),
    },
    position,
    read(at) {
      const inside = within(position, at);
      const values = named.map(({ name, values: column }) => ({
        label: name,
        text: `${threeFigures(lineAt(time_s, column, n, inside))} kWh`,
      }));
      return { where: axis.format(inside), values };
    },
  };
}

/** Sums of each line; seconds that were not logged are in none of them, so that all three are of the same time. */
function summed_kWh({ time_s, measured_W, predicted_W, corrected_W }: MeasuredLines) {
  const n = time_s.length;
  const known_W = filled(measured_W);
  const of = (power_W: Float64Array) => {
    const sum = new Float64Array(n);
    for (let i = 1; i < n; i++) {
      const isKnown = !Number.isNaN(known_W[i] as number);
      const dt_s = Math.min(2, (time_s[i] as number) - (time_s[i - 1] as number));
      sum[i] = (sum[i - 1] as number) + (isKnown ? ((power_W[i] as number) * dt_s) / J_PER_KWH : 0);
    }
    return sum;
  };
  return { logged: of(known_W), predicted: of(predicted_W), corrected: of(corrected_W) };
}

/** Samples further apart than a second hold until the next one, for as long as loggers are slow. */
const HOLDS = 70;

function filled(power_W: Float64Array): Float64Array {
  const result = power_W.slice();
  let since = HOLDS;
  let last_W = Number.NaN;
  for (let i = 0; i < result.length; i++) {
    if (Number.isNaN(result[i] as number)) {
      since++;
      if (since < HOLDS) result[i] = last_W;
    } else {
      last_W = result[i] as number;
      since = 0;
    }
  }
  return result;
}

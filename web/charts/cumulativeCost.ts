import { ruleX } from "@observablehq/plot";
import { moneyBetween } from "../../shared/quantity/money.ts";
import type { Span } from "../../sim/index.ts";
import { greys, highlight, ink, inkSoft } from "../look/tokens.ts";
import { domain } from "./parts/axes/domain.ts";
import { moneyAxis } from "./parts/axes/moneyAxis.ts";
import { writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { positionAlong, within, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { filledBetween } from "./parts/lines/filledBetween.ts";
import { namedLines } from "./parts/lines/namedLines.ts";

/** Money spent by the end of each year, the first entry before any is driven. */
interface SpentLine {
  readonly name: string;
  readonly spent: readonly Span[];
}

export interface CumulativeCostInput {
  readonly pack: SpentLine;
  readonly other: SpentLine;
  /** When the pack has paid for itself, in years; nothing where it has not. */
  readonly paidBack_years?: number | undefined;
  readonly currency: string;
}

const PLOT_PX = 270;
const TOP_PX = 38;

/** All that is spent over the years, a pack beside the alternative: the middle as a line, its band behind it. */
export function cumulativeCost(input: CumulativeCostInput, drawing: Drawing): Chart {
  const { pack, other, paidBack_years, currency } = input;
  const years = pack.spent.length - 1;
  if (years < 1) return emptyFigure(drawing, "No year is looked ahead, so there is nothing to show.");
  const lines = [
    { ...other, colour: greys[1] ?? inkSoft, dash: "6 3", width_px: 1.8, opacity: 0.22 },
    { ...pack, colour: highlight, dash: undefined, width_px: 2.4, opacity: 0.18 },
  ];
  const all = lines.flatMap(({ spent }) => spent.flatMap(({ low, high }) => [low, high]));
  const x = [0, years] as const;
  const y = domain(Math.min(0, ...all), Math.max(...all), true);
  const { scale, label } = moneyAxis("Spent in all", currency, y[1]);
  const { svg, frame } = namedLines(drawing, {
    lines: lines.map(({ name, spent, colour, dash, width_px }) => ({
      name,
      style: { colour, dash, symbol: "circle", width_px },
      points: spent.map(({ value }, year) => ({ x: year, y: value / scale })),
    })),
    xLabel: "Years driven",
    yLabel: label,
    x,
    y: [y[0] / scale, y[1] / scale],
    top_px: TOP_PX,
    plotHeight_px: PLOT_PX,
    isDotted: false,
    marksBelow: [
      ...lines.map(({ spent, colour, opacity }) =>
        filledBetween(
          spent.map((at, year) => ({ ...at, year })),
          ({ year }) => year,
          ({ low }) => low / scale,
          ({ high }) => high / scale,
          { fill: colour, fillOpacity: opacity },
        ),
      ),
      ...(paidBack_years === undefined
        ? []
        : [ruleX([paidBack_years], { stroke: ink, strokeWidth: 1, strokeDasharray: "2 3" })]),
    ],
  });
  if (paidBack_years !== undefined) {
    const at = xPixel(frame, paidBack_years);
    const isLeft = at > (frame.left + frame.right) / 2;
    writeWords(svg, {
      x: at + (isLeft ? -6 : 6),
      y: frame.bottom - 12,
      anchor: isLeft ? "end" : "start",
      isHaloed: true,
      lines: [`paid back, middle: year ${paidBack_years.toFixed(0)}`],
    });
  }
  const format = (at: Span | undefined) => (at ? moneyBetween(at, currency) : "");
  const ends = [...lines]
    .toReversed()
    .map(({ name, spent }) => `${name} ${format(spent[0])} at once and ${format(spent[years])} in all`);
  const met =
    paidBack_years === undefined
      ? "the pack’s line does not come down to the alternative’s"
      : `their middle lines meet after ${paidBack_years.toFixed(1)} years`;
  const alt = `Money spent over ${years} years: ${ends.join("; ")}; ${met}.`;
  nameFigure(svg, alt);
  const position = { ...positionAlong(frame, "year", 1, years), from_px: TOP_PX };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "after_years", label: "After years" },
        { name: "way", label: "Way" },
        { name: "spent_money", label: "Spent in all, middle" },
        { name: "spentLow_money", label: "At least" },
        { name: "spentHigh_money", label: "At most" },
        { name: "currency", label: "Currency" },
      ],
      rows: lines
        .toReversed()
        .flatMap(({ name, spent }) =>
          spent.map(({ value, low, high }, year) => [year, name, ...[value, low, high].map(hundredths), currency]),
        ),
    },
    position,
    read(at) {
      const year = Math.round(within(position, at));
      return {
        where: year === 0 ? "at once" : `after ${year === 1 ? "1 year" : `${year} years`}`,
        values: lines.toReversed().map(({ name, spent }) => ({ label: name, text: format(spent[year]) })),
      };
    },
  };
}

function hundredths(amount: number): number {
  return Math.round(amount * 100) / 100;
}

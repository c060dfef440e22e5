import { rect, ruleX, ruleY } from "@observablehq/plot";
import { bin, max } from "d3-array";
import { heed, ink, paper } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { domain } from "./parts/axes/domain.ts";
import { drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel } from "./parts/figure/frame.ts";
import { ledgerFills } from "./parts/figure/inks.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { stairs } from "./parts/lines/stairs.ts";

export interface DaysDistributionInput {
  readonly days_m: readonly number[];
  readonly usual_m: number;
  readonly longest_m: number;
  readonly packs: readonly { readonly name: string; readonly index: number; readonly range_m: number }[];
}

const LEFT_PX = 46;

/** How far the days go, counted in equal steps of distance, with the usual and longest day and every pack's range marked. */
export function daysDistribution(input: DaysDistributionInput, drawing: Drawing): Chart {
  if (input.days_m.length === 0)
    return emptyFigure(drawing, "No day is known yet, so there is no distribution to show.");
  const { sign, suffix } = (drawing.units ?? METRIC).distance;
  const shown = (distance_m: number) => inUnit((drawing.units ?? METRIC).distance, distance_m);
  const days = input.days_m.map(shown);
  const marks = [
    { name: "usual day", at: shown(input.usual_m), colour: ink, dash: undefined },
    { name: "longest day", at: shown(input.longest_m), colour: heed, dash: undefined },
    ...input.packs.map((pack) => ({
      name: pack.name,
      at: shown(pack.range_m),
      colour: packStyle(pack.index, drawing.chosen).colour,
      dash: packStyle(pack.index, drawing.chosen).dash ?? "12 2",
    })),
  ].sort((a, b) => a.at - b.at);
  const right = drawing.width_px - 18;
  const x: [number, number] = [0, Math.max(max(days) ?? 0, ...marks.map((mark) => mark.at)) * 1.04 || 1];
  const words = marks.map((mark) => {
    const distance = ` ${threeFigures(mark.at)} ${sign}`;
    return `${wrapped(mark.name, (right - LEFT_PX) * 0.7, FONT_PX, 1).join("")}${distance}`;
  });
  const step = stairs(
    marks.map((mark, i) => ({
      at: LEFT_PX + (mark.at / x[1]) * (right - LEFT_PX),
      width: textWidth_px(words[i] ?? "", FONT_PX) + 10,
    })),
    right + 12,
  );
  const longest = max(days) ?? 0;
  const bins = bin()
    .domain([0, longest || 1])
    .thresholds(Math.min(20, Math.max(5, Math.ceil(Math.sqrt(days.length)))))(days);
  const counts = bins.map((each) => ({ from: each.x0 ?? 0, to: each.x1 ?? 0, count: each.length }));
  const top = 36 + step.height * LINE_PX;
  const bottom = top + 190;
  const frame: Frame = {
    left: LEFT_PX,
    right,
    top,
    bottom,
    height: bottom + BELOW_PX,
    x,
    y: domain(0, Math.max(...counts.map((each) => each.count)), true),
  };
  const whole = [...new Set(Array.from({ length: 6 }, (_, i) => Math.round((frame.y[1] * i) / 5)))];
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: `Distance in a day (${sign})`, ticks: ticksFor(right - LEFT_PX) }),
    leftAxis({ label: "Days (number)", ticks: whole }, LEFT_PX),
    rect(counts, { x1: "from", x2: "to", y1: 0, y2: "count", fill: ledgerFills.rolling, stroke: paper }),
    ruleY([0], { stroke: ink }),
    marks.map((mark) =>
      ruleX([mark.at], { stroke: mark.colour, strokeWidth: 1.8, ...(mark.dash ? { strokeDasharray: mark.dash } : {}) }),
    ),
  ]);
  marks.forEach((mark, i) => {
    const at = step.x[i] ?? 0;
    const y = top - 14 - ((step.step[i] ?? 0) + 0.5) * LINE_PX;
    drawPath(
      svg,
      [
        [at, y - 5],
        [at, top - 10],
        [xPixel(frame, mark.at), top],
      ],
      mark.colour,
      1,
    );
    writeWords(svg, { x: at + 4, y, lines: [words[i] ?? ""] });
  });
  const within_m = (range_m: number) => input.days_m.filter((day_m) => day_m <= range_m).length;
  const fullest = counts.reduce((a, b) => (b.count > a.count ? b : a), { from: 0, to: 0, count: 0 });
  const alt =
    `Distances of ${counted(days.length)}, ${fullest.count} of them between ${threeFigures(fullest.from)} and ` +
    `${threeFigures(fullest.to)} ${sign}. The job's usual day is ${threeFigures(shown(input.usual_m))} ${sign}, the longest ` +
    `${threeFigures(shown(input.longest_m))} ${sign}. ` +
    input.packs
      .map(
        (pack) =>
          `${pack.name} reaches ${threeFigures(shown(pack.range_m))} ${sign}, which covers ${within_m(pack.range_m)} of ${counted(days.length)}.`,
      )
      .join(" ");
  nameFigure(svg, alt);
  const position = positionAlong(frame, "day_m", 1 / (drawing.units ?? METRIC).distance.perBase);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: `from_${suffix}`, label: `From (${sign})` },
        { name: `to_${suffix}`, label: `To (${sign})` },
        { name: "days", label: "Days (number)" },
        { name: "what", label: "What" },
      ],
      rows: [
        ...counts.map((each) => [each.from, each.to, each.count, "days as long as that"]),
        ...marks.map(({ at, name }) => [0, at, days.filter((day) => day <= at).length, `days no longer than: ${name}`]),
      ],
    },
    position,
    read(at) {
      const inside = within(position, at);
      const here = counts.find((each) => shown(inside) >= each.from && shown(inside) < each.to)?.count ?? 0;
      return {
        where: `${threeFigures(shown(inside))} ${sign}`,
        values: [
          { label: "days about as long", text: String(here) },
          { label: "days no longer", text: `${within_m(inside)} of ${days.length}` },
        ],
      };
    },
  };
}

function counted(days: number): string {
  return days === 1 ? "1 day" : `${days} days`;
}

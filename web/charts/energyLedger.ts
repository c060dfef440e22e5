import { rect, ruleX } from "@observablehq/plot";
import type { Candidate } from "../../sim/index.ts";
import { greys, highlight, ink, inkSoft, paper } from "../look/tokens.ts";
import { bottomAxis, ticksFor } from "./parts/axes/axes.ts";
import { drawPath, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing, Position } from "./parts/figure/chart.ts";
import { lineAt } from "./parts/figure/columnAt.ts";
import { FONT_PX, LINE_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { type FigureUnit, inUnit, METRIC } from "./parts/figure/figureUnits.ts";
import { drawFrame, type Frame, xPixel } from "./parts/figure/frame.ts";
import { inkOn, ledgerFills } from "./parts/figure/inks.ts";
import { partsAlong, readPart } from "./parts/figure/ledgerReading.ts";
import {
  fromPack_Wh,
  type LedgerEntry,
  ledgerEntries,
  ledgerNames,
  middle,
  type Segment,
  stacked,
} from "./parts/figure/ledgerStack.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { stackFigures } from "./parts/figure/stackFigures.ts";
import { textWidth_px, wrapped } from "./parts/figure/textWidth.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { stairs } from "./parts/lines/stairs.ts";

export { fromPack_Wh, type LedgerEntry, ledgerNames };

export type LedgerCandidate = Pick<Candidate, "name" | "distance_km" | "ledger_Wh">;

interface Bar {
  readonly name: string;
  readonly parts: readonly Segment[];
  readonly total: number;
}

const BAR_PX = 30;
const ROW_PX = 26;
const LEFT_PX = 14;

/**
 * Where every Wh/km that leaves the pack goes: the chosen pack in full, its largest part in the highlight, what is given back left of
 * zero; beneath it what each other pack takes more or less than that.
 */
export function energyLedger(candidates: readonly LedgerCandidate[], drawing: Drawing): Chart {
  const chosenName = candidates[drawing.chosen ?? 0]?.name;
  const driven = candidates.filter((pack) => pack.distance_km > 0);
  if (driven.length === 0)
    return emptyFigure(drawing, "No pack covered any distance, so no energy over distance is shown.");
  const unit = (drawing.units ?? METRIC).consumption;
  const bars = driven.map(
    ({ name, ledger_Wh, distance_km }): Bar => ({
      name,
      parts: stacked((entry) => inUnit(unit, ledger_Wh[entry] / distance_km)),
      total: inUnit(unit, fromPack_Wh(ledger_Wh) / distance_km),
    }),
  );
  const chosenAt = Math.max(
    0,
    bars.findIndex(({ name }) => name === chosenName),
  );
  const chosen = bars[chosenAt] as Bar;
  const others = bars.filter((bar) => bar !== chosen);
  const upper = wholeBar(chosen, unit, drawing);
  const lower = others.length > 0 ? differences(chosen, others, unit, drawing) : undefined;
  const svg = stackFigures(drawing, lower ? [upper.svg, lower.svg] : [upper.svg]);
  const alt =
    `Energy from the pack in ${unit.sign}. ${sentence(chosen)}` +
    others.map((bar) => ` ${bar.name}: ${differenceWords(bar.total - chosen.total, unit)} ${chosen.name}.`).join("");
  nameFigure(svg, alt);
  const upper_px = Number(upper.svg.getAttribute("height"));
  // Under the bars, so that the reading line does not strike out their numbers.
  const rows = [chosen, ...others];
  const under = rows.map((_, i) => (i === 0 ? upper.under_px : upper_px + (lower?.under_px(i - 1) ?? 0)));
  const places = rows.map((_, i) => i);
  const named = namedParts(chosen);
  const position: Position = {
    quantity: "packDifference",
    first: 0,
    last: rows.length - 1,
    step: 1,
    isVertical: true,
    from_px: LEFT_PX,
    to_px: drawing.width_px - 16,
    toPixel: (place) => lineAt(places, under, places.length, place),
    fromPixel: (pixel) => lineAt(under, places, places.length, pixel),
  };
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        ...ledgerEntries.map((entry) => ({
          name: `${entry}_${unit.suffix}`,
          label: `${ledgerNames[entry]} (${unit.sign})`,
        })),
        { name: `total_${unit.suffix}`, label: `total (${unit.sign})` },
      ],
      rows: bars.map((bar) => [bar.name, ...bar.parts.map((each) => each.value), bar.total]),
    },
    position: lower ? position : partsAlong(named, upper.across, upper.under_px),
    read(at) {
      if (!lower) return readPart(named, chosen, at, unit);
      const bar = rows[Math.min(rows.length - 1, Math.max(0, Math.round(at)))] ?? chosen;
      const format = (value: number) => `${threeFigures(value)} ${unit.sign}`;
      return {
        where: bar.name,
        values: [
          { label: "total", text: format(bar.total) },
          ...bar.parts.map((each) => ({ label: ledgerNames[each.entry], text: format(each.value) })),
        ],
      };
    },
  };
}
/** One bar with its parts named above it and its total beneath. */
function wholeBar(
  bar: Bar,
  unit: FigureUnit,
  drawing: Drawing,
): { svg: SVGSVGElement; under_px: number; across: (value: number) => number } {
  const right = drawing.width_px - 16;
  const ends = bar.parts.flatMap(({ from, to }) => [from, to]);
  const reach: [number, number] = [Math.min(...ends), Math.max(...ends)];
  if (reach[1] <= reach[0]) reach[1] = reach[0] + 1;
  const across = (value: number) => LEFT_PX + ((value - reach[0]) / (reach[1] - reach[0])) * (right - LEFT_PX);
  const wide = (each: Segment) => Math.abs(across(each.to) - across(each.from));
  const isNumbered = (each: Segment) => textWidth_px(threeFigures(each.value), FONT_PX) + 6 <= wide(each);
  const largest = bar.parts.reduce((a, b) => (b.value > a.value ? b : a));
  const fillOf = (each: Segment) => (each === largest ? highlight : ledgerFills[each.entry]);
  const named = namedParts(bar).filter((each) => wide(each) >= 0.5);
  const words = named.map(
    (each) => `${ledgerNames[each.entry]}${isNumbered(each) ? "" : ` ${threeFigures(each.value)}`}`,
  );
  const step = stairs(
    named.map((each, i) => ({ at: across(middle(each)), width: textWidth_px(words[i] ?? "", FONT_PX) + 10 })),
    right + 12,
  );
  const top = 8 + step.height * LINE_PX + 14;
  const bottom = top + BAR_PX;
  const height = bottom + 26;
  const svg = drawFrame(drawing, { left: LEFT_PX, right, top, bottom, height, x: reach, y: [BAR_PX, 0] }, [
    rect(bar.parts, { x1: "from", x2: "to", y1: 0, y2: BAR_PX, fill: fillOf, stroke: paper, strokeWidth: 1.5 }),
    reach[0] < 0 ? ruleX([0], { stroke: ink, strokeWidth: 1 }) : null,
  ]);
  named.forEach((each, i) => {
    const at = step.x[i] ?? 0;
    const y = top - 14 - ((step.step[i] ?? 0) + 0.5) * LINE_PX;
    const lead = [[at, y - 5], [at, top - 12], [across(middle(each)), top - 1]] as const; // biome-ignore format: one line of points
    drawPath(svg, lead, inkSoft, 0.75);
    writeWords(svg, { x: at + 4, y, lines: [words[i] ?? ""], fill: each === largest ? highlight : ink });
  });
  for (const each of bar.parts.filter(isNumbered)) {
    const fill = inkOn(fillOf(each), ink, paper);
    writeWords(svg, {
      x: across(middle(each)),
      y: top + BAR_PX / 2,
      lines: [threeFigures(each.value)],
      anchor: "middle",
      fill,
    });
  }
  const total = `${threeFigures(bar.total)} ${unit.sign} from the pack`;
  const [name = ""] = wrapped(bar.name, right - across(0) - textWidth_px(total, FONT_PX) - 20, FONT_PX, 1);
  writeWords(svg, { x: across(0), y: bottom + 13, lines: [`${name}: ${total}`], isHaloed: true });
  return { svg, under_px: bottom + 1, across };
}

/** The parts of a bar that have a size, from left to right. */
function namedParts({ parts }: Bar): readonly Segment[] {
  return parts.filter(({ value }) => value !== 0).toSorted((a, b) => middle(a) - middle(b));
}

/** What each other pack takes more (to the right) or less than the chosen one, on a scale of its own. */
function differences(
  chosen: Bar,
  others: readonly Bar[],
  unit: FigureUnit,
  drawing: Drawing,
): { svg: SVGSVGElement; under_px: (place: number) => number } {
  const most = Math.max(1e-9, ...others.map(({ total }) => Math.abs(total - chosen.total)));
  const names = others.map(({ name }) => wrapped(name, drawing.width_px * 0.25, FONT_PX, 1).join(""));
  const isLess = others.some(({ total }) => total < chosen.total);
  const words = others.map(({ total }) => signed(total - chosen.total, unit));
  const space_px = 14 + Math.max(...words.map((each) => textWidth_px(each, FONT_PX)));
  const top = 10;
  const bottom = top + others.length * ROW_PX;
  const frame: Frame = {
    left: LEFT_PX + 10 + Math.max(...names.map((name) => textWidth_px(name, FONT_PX))) + (isLess ? space_px : 0),
    right: drawing.width_px - 16 - space_px,
    top,
    bottom,
    height: bottom + 44,
    x: [isLess ? -most : 0, others.some(({ total }) => total > chosen.total) ? most : 0.2 * most],
    y: [bottom - top, 0],
  };
  const svg = drawFrame(drawing, frame, [
    bottomAxis({
      label: `More or less than ${chosen.name} (${unit.sign})`,
      ticks: Math.min(5, ticksFor(frame.right - frame.left)),
    }),
    rect(others, {
      x1: 0,
      x2: (bar: Bar) => bar.total - chosen.total,
      y1: (_: Bar, i: number) => i * ROW_PX + 5,
      y2: (_: Bar, i: number) => (i + 1) * ROW_PX - 5,
      fill: greys[2] ?? inkSoft,
    }),
    ruleX([0], { stroke: ink, strokeWidth: 1 }),
  ]);
  others.forEach(({ total }, i) => {
    const y = top + (i + 0.5) * ROW_PX;
    const difference = total - chosen.total;
    const end = xPixel(frame, difference);
    writeWords(svg, { x: LEFT_PX, y, lines: [names[i] ?? ""] });
    const side = difference < 0 ? ({ x: end - 6, anchor: "end" } as const) : ({ x: end + 6, anchor: "start" } as const);
    writeWords(svg, { ...side, y, lines: [words[i] ?? ""] });
  });
  return { svg, under_px: (place) => top + (place + 1) * ROW_PX - 3 };
}

function signed(difference: number, unit: FigureUnit): string {
  const size = threeFigures(Math.abs(Number(difference.toFixed(1))));
  return `${size === "0" ? "±" : difference < 0 ? "−" : "+"}${size} ${unit.sign}`;
}

function differenceWords(difference: number, unit: FigureUnit): string {
  const size = threeFigures(Math.abs(Number(difference.toFixed(1))));
  return size === "0" ? "the same as" : `${size} ${unit.sign} ${difference < 0 ? "less" : "more"} than`;
}

function sentence({ name, total, parts }: Bar): string {
  const listed = parts
    .filter((each) => threeFigures(each.value) !== "0")
    .toSorted((a, b) => b.value - a.value)
    .map((each) => `${ledgerNames[each.entry]} ${threeFigures(each.value)}`);
  return `${name}: ${threeFigures(total)} in all${listed.length > 0 ? `, of which ${listed.join(", ")}` : ""}.`;
}

import { ruleY } from "@observablehq/plot";
import { ticks } from "d3-array";
import { heed, ink, inkSoft } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { type ChannelKey, channelLabel, channelNamed } from "./parts/axes/channelQuantities.ts";
import { domain, reach } from "./parts/axes/domain.ts";
import { type Along, roadAxis } from "./parts/axes/roadAxis.ts";
import { drawBox, writeWords } from "./parts/figure/annotate.ts";
import type { Chart, Drawing } from "./parts/figure/chart.ts";
import { intervalAt } from "./parts/figure/columnAt.ts";
import { drawnColumn } from "./parts/figure/drawnColumn.ts";
import type { DrawnPack } from "./parts/figure/drawnPack.ts";
import { FONT_PX } from "./parts/figure/drawPlot.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { wrapped } from "./parts/figure/textWidth.ts";
import { plainNumber, threeFigures } from "./parts/figure/threeFigures.ts";
import { heldSpans } from "./parts/lines/heldBackBy.ts";
import { linePath } from "./parts/lines/linePath.ts";
import { straighten, UNSEEN_px } from "./parts/lines/straighten.ts";
import { thin } from "./parts/lines/thin.ts";

export interface SmallMultiplesInput {
  readonly packs: readonly DrawnPack[];
  readonly channel: ChannelKey;
  readonly along: Along;
}

const LEFT_PX = 52;
const TOP_PX = 48;
const STRIP_PX = 92;
/** From the top of a strip to the top of the next; the name of a pack stands between. */
const STEP_PX = STRIP_PX + 32;

/** One channel of some packs, a strip each under one another, all on the same two scales; a bar above marks where a limit holds the car back. */
export function smallMultiples(input: SmallMultiplesInput, drawing: Drawing): Chart {
  const packs = input.packs.filter((pack) => pack.channels.length > 0);
  if (packs.length === 0) return emptyFigure(drawing, "No pack has been driven, so there is nothing to compare.");
  const units = drawing.units ?? METRIC;
  const quantity = channelNamed(input.channel);
  const { sign, suffix } = quantity.unit(units);
  const columns = packs.map(({ channels }) => quantity.column(channels, units));
  const reaches = columns.map((column) => reach(column, column.length));
  const y = domain(Math.min(...reaches.map(([low]) => low)), Math.max(...reaches.map(([, high]) => high)));
  const baseOf = (pack: DrawnPack) => (input.along === "time" ? pack.channels.time_s : pack.channels.distance_m);
  const alongs = packs.map((pack) => reach(baseOf(pack), pack.channels.length));
  const first = Math.min(...alongs.map(([low]) => low));
  const last = Math.max(...alongs.map(([, high]) => high));
  const axis = roadAxis(input.along, last, units);
  const right = drawing.width_px - 18;
  const wide_px = right - LEFT_PX;
  const x: [number, number] = [axis.shown(first), last > first ? axis.shown(last) : axis.shown(first) + 1];

  const bottom = TOP_PX + (packs.length - 1) * STEP_PX + STRIP_PX;
  // One frame holds all strips, and its vertical scale is pixels: a drawing a strip would take five times as long.
  const frame: Frame = { left: LEFT_PX, right, top: TOP_PX, bottom, height: bottom + BELOW_PX, x, y: [bottom, TOP_PX] };
  const downAt = (i: number) => (value: number) =>
    TOP_PX + i * STEP_PX + STRIP_PX - ((value - y[0]) / (y[1] - y[0])) * STRIP_PX;
  const acrossAt = (along: number) => xPixel(frame, axis.shown(along));
  const floor = y[0] <= 0 && y[1] >= 0 ? 0 : y[0];
  const rows = packs.map((pack, i) => thin(baseOf(pack), columns[i] ?? [], columns[i]?.length ?? 0, wide_px));
  const heights = new Map(packs.flatMap((_, i) => ticks(...y, 3).map((value) => [downAt(i)(value), value])));
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: axis.label, ticks: ticksFor(wide_px) }),
    leftAxis(
      {
        label: channelLabel(quantity, units),
        ticks: [...heights.keys()],
        tickFormat: (height) => plainNumber(heights.get(height) ?? Number.NaN),
      },
      LEFT_PX,
    ),
    ruleY(
      packs.map((_, i) => downAt(i)(floor)),
      { stroke: ink },
    ),
    packs.map((pack, i) => {
      const along = baseOf(pack);
      const column = columns[i] ?? new Float64Array();
      const drawn = straighten(rows[i] ?? [], along, column, ((y[1] - y[0]) / STRIP_PX) * UNSEEN_px);
      const places = drawnColumn(drawn, along, acrossAt);
      const { colour } = packStyle(pack.index, drawing.chosen);
      // One path for line and area, closed along the floor: two would take twice as long to draw.
      return linePath(
        closed(places, places[0] ?? 0, places.at(-1) ?? 0),
        closed(drawnColumn(drawn, column, downAt(i)), downAt(i)(floor), downAt(i)(floor)),
        // Whole, whatever the pack's dash: each strip bears its name, and dashes break up a spiky line.
        { fill: colour, "fill-opacity": 0.12, stroke: colour, "stroke-width": 1.5 },
      );
    }),
  ]);
  packs.forEach(({ name }, i) => {
    const lines = wrapped(name, wide_px, FONT_PX, 1);
    writeWords(svg, { x: LEFT_PX + 4, y: TOP_PX + i * STEP_PX - 10, lines, fill: inkSoft, isHaloed: true });
  });
  const held = packs.map((pack) => heldSpans(pack.channels, baseOf(pack), (last - first) / 200));
  held.forEach((spans, i) => {
    const top = TOP_PX + i * STEP_PX;
    for (const { from, to } of spans)
      drawBox(svg, acrossAt(from), top - 3, Math.max(2, acrossAt(to) - acrossAt(from)), 3, heed);
    const longest = spans.toSorted((a, b) => b.time_s - a.time_s)[0];
    if (!longest) return;
    const held_s = spans.reduce((sum, { time_s }) => sum + time_s, 0);
    const words = `held back ${threeFigures(held_s)} s: ${longest.limit}`;
    writeWords(svg, { x: right - 4, y: top - 10, lines: [words], anchor: "end", fill: heed, isHaloed: true });
  });
  const format = (value: number) => `${threeFigures(value)} ${sign}`;
  const alt = `${quantity.name} of each pack over ${axis.format(last)}: ${packs
    .map((pack, i) => {
      const held_s = (held[i] ?? []).reduce((sum, { time_s }) => sum + time_s, 0);
      const heldBack = held_s > 0 ? `, held back for ${threeFigures(held_s)} s` : "";
      return `${pack.name} between ${format(reaches[i]?.[0] ?? 0)} and ${format(reaches[i]?.[1] ?? 0)}${heldBack}`;
    })
    .join("; ")}.`;
  nameFigure(svg, alt);
  const position = positionAlong(frame, axis.quantity, axis.perShown);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        { name: axis.name, label: axis.label },
        { name: `${quantity.key}_${suffix}`, label: channelLabel(quantity, units) },
      ],
      get rows() {
        return packs.flatMap((pack, i) =>
          (rows[i] ?? []).map((row) => [
            pack.name,
            axis.shown(baseOf(pack)[row] as number),
            columns[i]?.[row] as number,
          ]),
        );
      },
    },
    position,
    read(at) {
      const inside = within(position, at);
      return {
        where: axis.format(inside),
        values: packs.map((pack, i) => ({
          label: pack.name,
          text:
            inside > (alongs[i]?.[1] ?? 0)
              ? "ended before"
              : format(columns[i]?.[intervalAt(baseOf(pack), pack.channels.length, inside)] as number),
        })),
      };
    },
  };
}

/** The values with one more at each end. */
function closed(values: Float64Array, first: number, last: number): Float64Array {
  const all = new Float64Array(values.length + 2);
  all[0] = first;
  all.set(values, 1);
  all[values.length + 1] = last;
  return all;
}

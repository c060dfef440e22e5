import { lineY, ruleY } from "@observablehq/plot";
import { ink, inkSoft } from "../look/tokens.ts";
import { writeWords } from "./annotate.ts";
import { bottomAxis, leftAxis, ticksFor } from "./axes.ts";
import { type ChannelKey, channelLabel, channelNamed } from "./channelQuantities.ts";
import type { Chart, Drawing } from "./chart.ts";
import { intervalAt } from "./columnAt.ts";
import { domain, reach } from "./domain.ts";
import { drawnColumn } from "./drawnColumn.ts";
import type { DrawnPack } from "./drawnPack.ts";
import { FONT_PX } from "./drawPlot.ts";
import { emptyFigure } from "./emptyFigure.ts";
import { METRIC } from "./figureUnits.ts";
import { drawFrame, type Frame, positionAlong, within } from "./frame.ts";
import { nameFigure } from "./nameFigure.ts";
import { packStyle } from "./packStyle.ts";
import { type Along, roadAxis } from "./roadAxis.ts";
import { stackFigures } from "./stackFigures.ts";
import { straighten, UNSEEN_px } from "./straighten.ts";
import { wrapped } from "./textWidth.ts";
import { thin } from "./thin.ts";
import { threeFigures } from "./threeFigures.ts";

export interface SmallMultiplesInput {
  readonly packs: readonly DrawnPack[];
  readonly channel: ChannelKey;
  readonly along: Along;
}

const LEFT_PX = 52;
const STRIP_PX = 92;

/** One channel of every pack, a strip each under one another, all on the same two scales. */
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

  const strips = packs.map((pack, i) => {
    const isFirst = i === 0;
    const isLast = i === packs.length - 1;
    const top = isFirst ? 48 : 24;
    const bottom = top + STRIP_PX;
    const frame: Frame = { left: LEFT_PX, right, top, bottom, height: bottom + (isLast ? 42 : 8), x, y };
    const column = columns[i] ?? new Float64Array();
    const along = baseOf(pack);
    const rows = thin(along, column, column.length, wide_px);
    const drawn = straighten(rows, along, column, ((y[1] - y[0]) / STRIP_PX) * UNSEEN_px);
    const shownAlong = drawnColumn(drawn, along, axis.shown);
    const { colour } = packStyle(pack.index);
    const floor = y[0] <= 0 && y[1] >= 0 ? 0 : y[0];
    const noWords = isLast ? {} : { tickFormat: () => "" };
    const svg = drawFrame(drawing, frame, [
      bottomAxis({ label: isLast ? axis.label : null, ticks: ticksFor(wide_px), ...noWords }),
      leftAxis({ label: isFirst ? channelLabel(quantity, units) : null, ticks: 3 }, LEFT_PX),
      ruleY([floor], { stroke: ink }),
      // One path for line and area, closed along the floor: two would take twice as long to draw.
      lineY(
        { length: drawn.length + 2 },
        {
          x: closed(shownAlong, shownAlong[0] ?? 0, shownAlong.at(-1) ?? 0),
          y: closed(drawnColumn(drawn, column), floor, floor),
          fill: colour,
          fillOpacity: 0.12,
          stroke: colour,
          // Whole, whatever the pack's dash: each strip bears its name, and dashes break up a spiky line.
          strokeWidth: 1.5,
        },
      ),
    ]);
    writeWords(svg, {
      x: LEFT_PX + 4,
      y: top - 10,
      lines: wrapped(pack.name, wide_px, FONT_PX, 1),
      fill: inkSoft,
      isHaloed: true,
    });
    return { svg, frame, rows };
  });
  const svg = stackFigures(
    drawing,
    strips.map((strip) => strip.svg),
  );
  const say = (value: number) => `${threeFigures(value)} ${sign}`;
  const alt = `${quantity.name} of each pack over ${axis.say(last)}: ${packs
    .map((pack, i) => `${pack.name} between ${say(reaches[i]?.[0] ?? 0)} and ${say(reaches[i]?.[1] ?? 0)}`)
    .join("; ")}.`;
  nameFigure(svg, alt);
  const frame = strips[0]?.frame as Frame;
  const position = {
    ...positionAlong(frame, axis.quantity, axis.perShown),
    to_px: strips.slice(0, -1).reduce((sum, strip) => sum + strip.frame.height, 0) + (strips.at(-1)?.frame.bottom ?? 0),
  };
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
          (strips[i]?.rows ?? []).map((row) => [
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
        where: axis.say(inside),
        values: packs.map((pack, i) => ({
          label: pack.name,
          text:
            inside > (alongs[i]?.[1] ?? 0)
              ? "ended before"
              : say(columns[i]?.[intervalAt(baseOf(pack), pack.channels.length, inside)] as number),
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

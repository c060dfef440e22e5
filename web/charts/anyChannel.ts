import { dot, line } from "@observablehq/plot";
import { ink, paper } from "../look/tokens.ts";
import { bottomAxis, leftAxis, ticksFor } from "./parts/axes/axes.ts";
import { type ChannelKey, type ChannelQuantity, channelLabel, channelNamed } from "./parts/axes/channelQuantities.ts";
import { domain, reach } from "./parts/axes/domain.ts";
import type { Chart, Drawing, PositionQuantity } from "./parts/figure/chart.ts";
import type { DrawnPack } from "./parts/figure/drawnPack.ts";
import { emptyFigure } from "./parts/figure/emptyFigure.ts";
import { METRIC } from "./parts/figure/figureUnits.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "./parts/figure/frame.ts";
import { nameFigure } from "./parts/figure/nameFigure.ts";
import { packStyle } from "./parts/figure/packStyle.ts";
import { threeFigures } from "./parts/figure/threeFigures.ts";
import { lineKey } from "./parts/keys/lineKey.ts";
import { packKey } from "./parts/keys/packKey.ts";
import { drawRampKey, rampKeyHeight_px } from "./parts/keys/rampKey.ts";
import { steppedRamp } from "./parts/keys/steppedRamp.ts";
import { thin } from "./parts/lines/thin.ts";
import { thinDots } from "./parts/lines/thinDots.ts";

export interface AnyChannelInput {
  readonly packs: readonly DrawnPack[];
  readonly x: ChannelKey;
  readonly y: ChannelKey;
  readonly colour?: ChannelKey;
}

const LEFT_PX = 58;
// Below the label of the vertical scale, which Plot puts at the very top.
const KEY_TOP_PX = 22;

/** Horizontal channels whose position other figures share, and how much of the base unit one of the shown is. */
const shared: Partial<Record<ChannelKey, { quantity: PositionQuantity; perShown(units: typeof METRIC): number }>> = {
  time: { quantity: "time_s", perShown: () => 60 },
  distance: { quantity: "distance_m", perShown: (units) => 1 / units.distance.perBase },
  speed: { quantity: "speed_mps", perShown: (units) => 1 / units.speed.perBase },
  motorSpeed: { quantity: "motorSpeed_rpm", perShown: () => 1 },
};

/**
 * Any channel of a run against any other, for the chosen packs, coloured by a third where one is chosen. Against time or
 * distance a line, otherwise dots; a pack's mark tells it apart where its colour is taken by the third channel.
 */
export function anyChannel(input: AnyChannelInput, drawing: Drawing): Chart {
  const packs = input.packs.filter((pack) => pack.channels.length > 0);
  if (packs.length === 0) return emptyFigure(drawing, "No pack has been driven, so there is nothing to show.");
  const units = drawing.units ?? METRIC;
  const chosen = {
    x: channelNamed(input.x),
    y: channelNamed(input.y),
    colour: input.colour ? channelNamed(input.colour) : undefined,
  };
  const columnsOf = (quantity: ChannelQuantity) => packs.map(({ channels }) => quantity.column(channels, units));
  const xs = columnsOf(chosen.x);
  const ys = columnsOf(chosen.y);
  const hues = chosen.colour ? columnsOf(chosen.colour) : [];
  const isAlong = input.x === "time" || input.x === "distance";
  const [xLow, xHigh] = reachOf(xs);
  const [yLow, yHigh] = reachOf(ys);
  const hueRamp = steppedRamp(...reachOf(hues));
  const hueTitle = chosen.colour ? channelLabel(chosen.colour, units) : "";
  const space_px = drawing.width_px - 30;
  const lineOf = (index: number) => {
    const { colour, dash, width_px } = packStyle(index, drawing.chosen);
    return { stroke: colour, strokeWidth: width_px, ...(dash ? { strokeDasharray: dash } : {}) };
  };
  const isLines = isAlong && !chosen.colour;
  // A key shows what is drawn: pieces of line for lines, so that it can be read in grey too.
  const key = isLines
    ? lineKey(
        packs.map(({ name, index }) => ({ words: name, style: lineOf(index) })),
        6,
        space_px,
      )
    : packKey(packs, 6, space_px, drawing.chosen, chosen.colour ? ink : undefined);
  const keys_px = key.height_px + (chosen.colour ? rampKeyHeight_px(hueRamp, hueTitle, space_px) : 0);
  const top = KEY_TOP_PX + 14 + keys_px;
  const bottom = top + Math.round(Math.min(340, Math.max(220, drawing.width_px * 0.45)));
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - 18,
    top,
    bottom,
    height: bottom + BELOW_PX,
    x: isAlong && xHigh > xLow ? [xLow, xHigh] : domain(xLow, xHigh),
    y: domain(yLow, yHigh),
  };
  const wide_px = frame.right - frame.left;
  const kept = packs.map((_, i) => {
    const x = xs[i] ?? new Float64Array();
    const y = ys[i] ?? new Float64Array();
    if (isAlong) return thin(x, y, x.length, Math.round(wide_px));
    return thinDots(
      x.map((value) => xPixel(frame, value)),
      y.map((value) => yPixel(frame, value)),
      x.length,
      3,
    );
  });
  const svg = drawFrame(
    drawing,
    frame,
    [
      bottomAxis({ label: channelLabel(chosen.x, units), ticks: ticksFor(wide_px) }),
      leftAxis({ label: channelLabel(chosen.y, units), ticks: 6 }, LEFT_PX),
      key.marks(frame, KEY_TOP_PX),
      packs.map((pack, i) => {
        const { colour, symbol } = packStyle(pack.index, drawing.chosen);
        const place = { x: (row: number) => xs[i]?.[row], y: (row: number) => ys[i]?.[row] };
        if (isLines) return line(kept[i] ?? [], { ...place, ...lineOf(pack.index) });
        const fill = chosen.colour ? (row: number) => hueRamp.colourOf(hues[i]?.[row] as number) : colour;
        return dot(kept[i] ?? [], {
          ...place,
          r: 2.6,
          symbol,
          fill,
          fillOpacity: 0.85,
          stroke: paper,
          strokeWidth: 0.4,
        });
      }),
    ],
    { color: { type: "identity" } },
  );
  key.writeNames(svg, KEY_TOP_PX);
  if (chosen.colour) drawRampKey(svg, hueRamp, hueTitle, 6, KEY_TOP_PX + key.height_px, space_px);

  const format = (quantity: ChannelQuantity, value: number) => `${threeFigures(value)} ${quantity.unit(units).sign}`;
  const between = (quantity: ChannelQuantity, low: number, high: number) =>
    low === high ? format(quantity, low) : `${threeFigures(low)} to ${format(quantity, high)}`;
  const alt =
    `${chosen.y.name} against ${chosen.x.name.toLowerCase()}${chosen.colour ? `, coloured by ${chosen.colour.name.toLowerCase()} (${between(chosen.colour, ...reachOf(hues))})` : ""}: ` +
    `${packs
      .map(
        (pack, i) =>
          `${pack.name} ${between(chosen.y, ...reachOf([ys[i] ?? []]))} over ${between(chosen.x, ...reachOf([xs[i] ?? []]))}`,
      )
      .join("; ")}.`;
  nameFigure(svg, alt);
  const share = shared[input.x];
  const position = positionAlong(frame, share?.quantity ?? `channel ${input.x}`, share?.perShown(units) ?? 1);
  return {
    svg,
    alt,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        ...[chosen.x, chosen.y, ...(chosen.colour ? [chosen.colour] : [])].map((quantity) => ({
          name: `${quantity.key}_${quantity.unit(units).suffix}`,
          label: channelLabel(quantity, units),
        })),
      ],
      // Every sample, not only those that stand apart on the drawing, or the highest value might be missing.
      get rows() {
        return packs.flatMap((pack, i) =>
          Array.from(xs[i] ?? [], (x, row) => [
            pack.name,
            x,
            ys[i]?.[row] as number,
            ...(chosen.colour ? [hues[i]?.[row] as number] : []),
          ]),
        );
      },
    },
    position,
    read(at) {
      const shown = within(position, at) / (share?.perShown(units) ?? 1);
      const near = (frame.x[1] - frame.x[0]) / 100;
      return {
        where: format(chosen.x, shown),
        values: packs.map((pack, i) => {
          const rows = (kept[i] ?? []).filter((row) => Math.abs((xs[i]?.[row] as number) - shown) <= near);
          const values = rows.map((row) => ys[i]?.[row] as number);
          return {
            label: pack.name,
            text: values.length > 0 ? between(chosen.y, ...reachOf([values])) : "nothing near",
          };
        }),
      };
    },
  };
}

function reachOf(columns: readonly ArrayLike<number>[]): [number, number] {
  const reaches = columns.filter((column) => column.length > 0).map((column) => reach(column, column.length));
  if (reaches.length === 0) return [0, 0];
  return [Math.min(...reaches.map(([low]) => low)), Math.max(...reaches.map(([, high]) => high))];
}

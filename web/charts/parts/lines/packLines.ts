import { dot, type Markish } from "@observablehq/plot";
import { bottomAxis, leftAxis, ticksFor } from "../axes/axes.ts";
import { reach } from "../axes/domain.ts";
import type { RoadAxis } from "../axes/roadAxis.ts";
import type { Chart, Drawing } from "../figure/chart.ts";
import { lineAt } from "../figure/columnAt.ts";
import { drawnColumn } from "../figure/drawnColumn.ts";
import type { DrawnPack } from "../figure/drawnPack.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { BELOW_PX, drawFrame, type Frame, positionAlong, within, xPixel, yPixel } from "../figure/frame.ts";
import { packStyle } from "../figure/packStyle.ts";
import { textWidth_px, wrapped } from "../figure/textWidth.ts";
import { endLabels } from "./endLabels.ts";
import { linePath } from "./linePath.ts";
import { straighten, UNSEEN_px } from "./straighten.ts";
import { thin } from "./thin.ts";

export interface PackLinesInput {
  readonly packs: readonly DrawnPack[];
  readonly axis: RoadAxis;
  /** One column a pack, in the unit shown; the first `channels.length` values count. */
  readonly columns: readonly ArrayLike<number>[];
  /** Key of the value's column in a table. */
  readonly name: string;
  say(value: number): string;
  readonly yLabel: string;
  readonly yDomain: readonly [number, number];
  readonly yTicks: number | readonly number[];
  readonly height_px: number;
  /** A further line of label: what the pack at this place in the list ends on. */
  endWords?(place: number): string;
  readonly marksBelow?: readonly Markish[];
}

export interface PackLines extends Pick<Chart, "svg" | "table" | "read"> {
  readonly position: NonNullable<Chart["position"]>;
  readonly frame: Frame;
}

const LEFT_PX = 48;

/** One line a pack along a run, overlaid, each named at its end. */
export function packLines(drawing: Drawing, input: PackLinesInput): PackLines {
  const { packs, axis, columns } = input;
  const space_px = Math.min(190, Math.max(102, drawing.width_px * 0.26));
  const names = packs.map((pack, i) => [
    ...wrapped(pack.name, space_px, FONT_PX, drawing.width_px < 480 ? 3 : 2),
    ...(input.endWords ? [input.endWords(i)] : []),
  ]);
  const widest_px = Math.max(...names.flat().map((line) => textWidth_px(line, FONT_PX)));
  const frame: Frame = {
    left: LEFT_PX,
    right: drawing.width_px - Math.min(space_px, widest_px) - 26,
    top: 30,
    bottom: input.height_px - BELOW_PX,
    height: input.height_px,
    x: commonReach(packs, axis),
    y: input.yDomain,
  };
  const wide_px = Math.max(1, Math.round(frame.right - frame.left));
  const rows = packs.map(({ channels }, i) => thin(axis.column(channels), columns[i] ?? [], channels.length, wide_px));
  const unseen = ((frame.y[1] - frame.y[0]) / (frame.bottom - frame.top)) * UNSEEN_px;
  const x = (pack: DrawnPack) => (row: number) => axis.shown(axis.column(pack.channels)[row] as number);
  const svg = drawFrame(drawing, frame, [
    bottomAxis({ label: axis.label, ticks: ticksFor(wide_px) }),
    leftAxis({ label: input.yLabel, ticks: input.yTicks }, LEFT_PX),
    ...(input.marksBelow ?? []),
    packs.map((pack, i) => {
      const { colour, dash, symbol, width_px } = packStyle(pack.index, drawing.chosen);
      const along = axis.column(pack.channels);
      const column = columns[i] ?? [];
      const drawn = straighten(rows[i] ?? [], along, column, unseen);
      const place = { x: x(pack), y: (row: number) => column[row] };
      return [
        linePath(
          drawnColumn(drawn, along, (at) => xPixel(frame, axis.shown(at))),
          drawnColumn(drawn, column, (value) => yPixel(frame, value)),
          { stroke: colour, "stroke-width": width_px, "stroke-dasharray": dash },
        ),
        dot((rows[i] ?? []).slice(-1), { ...place, r: 4, fill: colour, symbol }),
      ];
    }),
  ]);
  const labels = packs.map((pack, i) => {
    const end = pack.channels.length - 1;
    return {
      lines: names[i] ?? [],
      x: xPixel(frame, x(pack)(end)),
      y: yPixel(frame, columns[i]?.[end] as number),
      colour: packStyle(pack.index, drawing.chosen).colour,
    };
  });
  endLabels(svg, labels, frame.right + 22, frame.top - 26, frame.bottom + 18);

  const position = positionAlong(frame, axis.quantity, axis.perShown);
  const valueAt = (pack: DrawnPack, column: ArrayLike<number>, at: number): string => {
    const along = axis.column(pack.channels);
    const { length } = pack.channels;
    if (at > (along[length - 1] as number)) return "ended before";
    return input.say(lineAt(along, column, length, at));
  };
  return {
    svg,
    frame,
    position,
    table: {
      columns: [
        { name: "pack", label: "Pack" },
        { name: axis.name, label: axis.label },
        { name: input.name, label: input.yLabel },
      ],
      get rows() {
        return packs.flatMap((pack, i) =>
          (rows[i] ?? []).map((row) => [pack.name, x(pack)(row), columns[i]?.[row] as number]),
        );
      },
    },
    read(at) {
      const inside = within(position, at);
      return {
        where: axis.say(inside),
        values: packs.map((pack, i) => ({ label: pack.name, text: valueAt(pack, columns[i] ?? [], inside) })),
      };
    },
  };
}

/** From the first to the last sample of all packs, in the unit shown; never empty. */
function commonReach(packs: readonly DrawnPack[], axis: RoadAxis): [number, number] {
  const reaches = packs.map(({ channels }) => reach(axis.column(channels), channels.length));
  const first = axis.shown(Math.min(...reaches.map(([low]) => low)));
  const last = axis.shown(Math.max(...reaches.map(([, high]) => high)));
  return [first, last > first ? last : first + 1];
}

import { dot, type Markish } from "@observablehq/plot";
import { writeWords } from "./annotate.ts";
import { FONT_PX } from "./drawPlot.ts";
import { type Frame, xPixel, yPixel } from "./frame.ts";
import { packStyle } from "./packStyle.ts";
import { textWidth_px, wrapped } from "./textWidth.ts";

const ROW_PX = 18;

export interface PackKey {
  readonly height_px: number;
  /** The packs' marks, for a frame that has at least that much room above it. */
  marks(frame: Frame, top_px: number): Markish[];
  /** The packs' names beside their marks. */
  writeNames(svg: SVGSVGElement, top_px: number): void;
}

/** Names of packs beside their marks, in rows, for figures of dots, whose ends can't be named. `fill` replaces the colours. */
export function packKey(
  packs: readonly { readonly name: string; readonly index: number }[],
  left_px: number,
  room_px: number,
  fill?: string,
): PackKey {
  let x = 0;
  let row = 0;
  const places = packs.map((pack) => {
    const [name = ""] = wrapped(pack.name, room_px - 24, FONT_PX, 1);
    const width = textWidth_px(name, FONT_PX) + 30;
    if (x + width > room_px && x > 0) {
      x = 0;
      row++;
    }
    const place = { name, x: left_px + x + 6, row, style: packStyle(pack.index) };
    x += width;
    return place;
  });
  const middle = (top_px: number, at: number) => top_px + (at + 0.5) * ROW_PX;
  return {
    height_px: packs.length === 0 ? 0 : (row + 1) * ROW_PX,
    marks(frame, top_px) {
      return places.map(({ x: at, row: on, style }) =>
        dot([0], {
          x: [valueAtPixel(frame, "x", at)],
          y: [valueAtPixel(frame, "y", middle(top_px, on))],
          r: 4,
          symbol: style.symbol,
          fill: fill ?? style.colour,
        }),
      );
    },
    writeNames(svg, top_px) {
      for (const { name, x: at, row: on } of places)
        writeWords(svg, { x: at + 9, y: middle(top_px, on), lines: [name] });
    },
  };
}

/** Value whose pixel this is, also beyond the frame. */
function valueAtPixel(frame: Frame, direction: "x" | "y", pixel: number): number {
  const [from, to] = frame[direction];
  const pixelOf = direction === "x" ? xPixel : yPixel;
  const start = pixelOf(frame, from);
  return from + ((pixel - start) / (pixelOf(frame, to) - start)) * (to - from);
}

import { dot, type Markish } from "@observablehq/plot";
import { writeWords } from "../figure/annotate.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { type Frame, valueAtPixel } from "../figure/frame.ts";
import { inRows, ROW_PX } from "../figure/inRows.ts";
import { packStyle } from "../figure/packStyle.ts";
import { textWidth_px, wrapped } from "../figure/textWidth.ts";

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
  space_px: number,
  chosen?: number,
  fill?: string,
): PackKey {
  const names = packs.map((pack) => wrapped(pack.name, space_px - 24, FONT_PX, 1).join(""));
  const { places, rows } = inRows(
    names.map((name) => textWidth_px(name, FONT_PX) + 30),
    space_px,
  );
  const middle = (top_px: number, row: number) => top_px + (row + 0.5) * ROW_PX;
  const at = (i: number) => left_px + 6 + (places[i]?.x ?? 0);
  return {
    height_px: rows * ROW_PX,
    marks(frame, top_px) {
      return packs.map((pack, i) => {
        const { symbol, colour } = packStyle(pack.index, chosen);
        const x = [valueAtPixel(frame, "x", at(i))];
        const y = [valueAtPixel(frame, "y", middle(top_px, places[i]?.row ?? 0))];
        return dot([0], { x, y, r: 4, symbol, fill: fill ?? colour });
      });
    },
    writeNames(svg, top_px) {
      names.forEach((name, i) => {
        writeWords(svg, { x: at(i) + 9, y: middle(top_px, places[i]?.row ?? 0), lines: [name] });
      });
    },
  };
}

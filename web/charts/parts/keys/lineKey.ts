import { line, type Markish } from "@observablehq/plot";
import { writeWords } from "../figure/annotate.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { type Frame, valueAtPixel } from "../figure/frame.ts";
import { inRows, ROW_PX } from "../figure/inRows.ts";
import { textWidth_px, wrapped } from "../figure/textWidth.ts";

const SAMPLE_PX = 26;

export interface LineKey {
  readonly height_px: number;
  /** A piece of every line, for a frame that has at least that much room above it. */
  marks(frame: Frame, top_px: number): Markish[];
  /** What the lines are, beside their pieces. */
  writeNames(svg: SVGSVGElement, top_px: number): void;
}

/** Names of lines beside a piece of each, in rows, for lines that lie too near each other to be named where they run. */
export function lineKey(
  lines: readonly {
    readonly words: string;
    readonly style: { readonly stroke: string; readonly strokeWidth: number; readonly strokeDasharray?: string };
  }[],
  left_px: number,
  space_px: number,
): LineKey {
  const words = lines.map((each) => wrapped(each.words, space_px - SAMPLE_PX - 6, FONT_PX, 1).join(""));
  const { places, rows } = inRows(
    words.map((each) => SAMPLE_PX + textWidth_px(each, FONT_PX) + 22),
    space_px,
  );
  const middle = (top_px: number, row: number) => top_px + (row + 0.5) * ROW_PX;
  return {
    height_px: rows * ROW_PX,
    marks(frame, top_px) {
      return lines.map(({ style }, i) => {
        const { x = 0, row = 0 } = places[i] ?? {};
        const y = valueAtPixel(frame, "y", middle(top_px, row));
        const ends = [x, x + SAMPLE_PX].map((pixel) => valueAtPixel(frame, "x", left_px + pixel));
        return line(ends, { x: ends, y: [y, y], ...style });
      });
    },
    writeNames(svg, top_px) {
      words.forEach((each, i) => {
        const { x = 0, row = 0 } = places[i] ?? {};
        writeWords(svg, { x: left_px + x + SAMPLE_PX + 6, y: middle(top_px, row), lines: [each] });
      });
    },
  };
}

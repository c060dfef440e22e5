import { drawBox, writeWords } from "../figure/annotate.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { inRows, ROW_PX } from "../figure/inRows.ts";
import { textWidth_px } from "../figure/textWidth.ts";
import type { SteppedRamp } from "./steppedRamp.ts";

/** Places of a key's entries: after its title where all have room there, otherwise all below it. */
function layOut(key: SteppedRamp, title: string, space_px: number) {
  const widths = key.steps.map(({ words }) => textWidth_px(words, FONT_PX) + 30);
  const after_px = textWidth_px(title, FONT_PX) + 12;
  const isOneRow = after_px + widths.reduce((sum, each) => sum + each, 0) <= space_px;
  return inRows(widths, space_px, isOneRow ? after_px : space_px);
}

/** Height that `drawRampKey` takes. */
export function rampKeyHeight_px(key: SteppedRamp, title: string, space_px: number): number {
  return layOut(key, title, space_px).rows * ROW_PX;
}

/** The steps of a colour scale in swatches and words, from (`left`, `top`) on. */
export function drawRampKey(
  svg: SVGSVGElement,
  key: SteppedRamp,
  title: string,
  left: number,
  top: number,
  space_px: number,
): void {
  writeWords(svg, { x: left, y: top + ROW_PX / 2, lines: [title] });
  const { places } = layOut(key, title, space_px);
  key.steps.forEach(({ colour, words }, i) => {
    const place = places[i];
    if (!place) return;
    const y = top + place.row * ROW_PX;
    drawBox(svg, left + place.x, y + 3, 14, 12, colour);
    writeWords(svg, { x: left + place.x + 18, y: y + ROW_PX / 2, lines: [words] });
  });
}

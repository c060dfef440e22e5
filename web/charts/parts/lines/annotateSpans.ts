import { writeWords } from "../figure/annotate.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { type Frame, xPixel } from "../figure/frame.ts";
import { textWidth_px } from "../figure/textWidth.ts";

/** Writes, above the frame, what each shaded span is; one that would run into the words before it goes without. */
export function annotateSpans(
  svg: SVGSVGElement,
  frame: Frame,
  spans: readonly { readonly from: number; readonly to: number; readonly words: string }[],
): void {
  let free = frame.left;
  for (const { from, to, words } of spans) {
    const half = textWidth_px(words, FONT_PX) / 2;
    const middle = xPixel(frame, (from + to) / 2);
    const x = Math.min(frame.right - half, Math.max(frame.left + half, middle));
    if (x - half < free) continue;
    free = x + half + 8;
    writeWords(svg, { x, y: frame.top - 8, lines: [words], anchor: "middle", isItalic: true });
  }
}

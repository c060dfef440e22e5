import { paper } from "../../../look/tokens.ts";
import { drawPath, writeWords } from "../figure/annotate.ts";
import { FONT_PX } from "../figure/drawPlot.ts";
import { textWidth_px } from "../figure/textWidth.ts";

/**
 * Writes one line of words over a strip of paper as long as they are, so that upright lines of the figure break off for them: run through,
 * they would strike them out.
 */
export function wordsOverLines(
  svg: SVGSVGElement,
  words: string,
  at: { x: number; y: number; strip_px: number },
): void {
  const { x, y, strip_px } = at;
  drawPath(
    svg,
    [
      [x - 2, y],
      [x + 4 + textWidth_px(words, FONT_PX), y],
    ],
    paper,
    strip_px,
  );
  writeWords(svg, { x, y, lines: [words] });
}

import { drawPath, writeWords } from "../figure/annotate.ts";
import { LINE_PX } from "../figure/drawPlot.ts";
import { spread } from "./spread.ts";

export interface EndLabel {
  readonly lines: readonly string[];
  /** Where the line that it names ends, in pixels. */
  readonly x: number;
  readonly y: number;
  readonly colour: string;
}

/** Names lines at their right ends, in place of a legend: labels apart from one another, each led to its line. */
export function endLabels(svg: SVGSVGElement, labels: readonly EndLabel[], left: number, top: number, bottom: number) {
  const centres = spread(
    labels.map((label) => label.y),
    labels.map((label) => label.lines.length * LINE_PX + 3),
    top,
    bottom,
  );
  labels.forEach((label, i) => {
    const y = centres[i] ?? label.y;
    drawPath(
      svg,
      [
        [label.x + 5, label.y],
        [left - 8, y],
        [left - 3, y],
      ],
      label.colour,
    );
    writeWords(svg, { x: left, y, lines: label.lines });
  });
}

import { inkSoft } from "../../../look/tokens.ts";
import { writeWords } from "./annotate.ts";
import { type Chart, type Drawing, NOTHING_READ } from "./chart.ts";
import { drawPlot } from "./drawPlot.ts";
import { nameFigure } from "./nameFigure.ts";
import { wrapped } from "./textWidth.ts";

/** A figure that has nothing to draw says why, in the place where the picture would be. */
export function emptyFigure(drawing: Drawing, why: string): Chart {
  const svg = drawPlot(drawing, { height: 80, axis: null, marks: [] });
  const lines = wrapped(why, drawing.width_px - 20, 13, 3);
  writeWords(svg, { x: 10, y: 40, lines, fill: inkSoft });
  nameFigure(svg, why);
  return { svg, alt: why, table: { columns: [], rows: [] }, read: () => NOTHING_READ };
}

import { ink, paper } from "../../../look/tokens.ts";
import type { Position } from "../figure/chart.ts";

/** Class of the reading line, which is not part of the picture and never saved with it. */
export const CURSOR_CLASS = "figure-cursor";

const SVG = "http://www.w3.org/2000/svg";

/** Draws the reading line (on a track: a ring) of a figure at a position; takes it away where there is none. */
export function drawCursor(svg: SVGSVGElement, position: Position, at: number | undefined): void {
  svg.querySelector(`.${CURSOR_CLASS}`)?.remove();
  if (at === undefined) return;
  const cursor = svg.ownerDocument.createElementNS(SVG, position.toPoint ? "circle" : "line");
  const set = (values: Readonly<Record<string, string | number>>) => {
    for (const [name, value] of Object.entries(values)) cursor.setAttribute(name, String(value));
  };
  set({ class: CURSOR_CLASS, stroke: ink, "stroke-width": 1.5, "pointer-events": "none" });
  if (position.toPoint) {
    const [cx, cy] = position.toPoint(at);
    set({ cx, cy, r: 7, fill: paper, "fill-opacity": 0.6 });
  } else {
    const along = position.toPixel(at);
    const { from_px, to_px } = position;
    set(
      position.isVertical
        ? { x1: from_px, x2: to_px, y1: along, y2: along }
        : { x1: along, x2: along, y1: from_px, y2: to_px },
    );
  }
  svg.appendChild(cursor);
}

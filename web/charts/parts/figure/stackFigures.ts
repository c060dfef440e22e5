import type { Drawing } from "./chart.ts";

/** One svg that holds several, `columns` beside one another, row under row, each in its own size. */
export function stackFigures(drawing: Drawing, parts: readonly SVGSVGElement[], columns = 1): SVGSVGElement {
  const only = parts[0];
  if (only && parts.length === 1) return only;
  const svg = drawing.document.createElementNS("http://www.w3.org/2000/svg", "svg");
  let x = 0;
  let y = 0;
  let row_px = 0;
  let wide_px = 0;
  parts.forEach((part, i) => {
    if (i > 0 && i % columns === 0) {
      x = 0;
      y += row_px;
      row_px = 0;
    }
    part.setAttribute("x", String(x));
    part.setAttribute("y", String(y));
    x += Number(part.getAttribute("width"));
    row_px = Math.max(row_px, Number(part.getAttribute("height")));
    wide_px = Math.max(wide_px, x);
    svg.appendChild(part);
  });
  const height = y + row_px;
  for (const [name, value] of Object.entries({ width: wide_px, height, viewBox: `0 0 ${wide_px} ${height}` })) {
    svg.setAttribute(name, String(value));
  }
  return svg;
}

import { ink, paper } from "../../../look/tokens.ts";
import { FONT_PX, LINE_PX } from "./drawPlot.ts";

const SVG = "http://www.w3.org/2000/svg";

export interface Words {
  readonly x: number;
  /** Middle of the block of lines. */
  readonly y: number;
  readonly lines: readonly string[];
  readonly anchor?: "start" | "middle" | "end";
  readonly fill?: string;
  /** A rim in the paper's colour, so that a line beneath does not run through the letters. */
  readonly isHaloed?: boolean;
  readonly fontSize_px?: number;
  readonly isItalic?: boolean;
}

/** Writes words into a drawing, in pixels of its view box. */
export function writeWords(svg: SVGSVGElement, words: Words): void {
  const document = svg.ownerDocument;
  const text = document.createElementNS(SVG, "text");
  const size_px = words.fontSize_px ?? FONT_PX;
  setAll(text, {
    "text-anchor": words.anchor ?? "start",
    fill: words.fill ?? ink,
    "font-size": size_px,
    ...(words.isItalic ? { "font-style": "italic" } : {}),
    ...(words.isHaloed
      ? { stroke: paper, "stroke-width": 3, "stroke-linejoin": "round", "paint-order": "stroke" }
      : {}),
  });
  const line_px = (LINE_PX * size_px) / FONT_PX;
  words.lines.forEach((line, i) => {
    const span = document.createElementNS(SVG, "tspan");
    setAll(span, { x: words.x, y: words.y + (i - (words.lines.length - 1) / 2) * line_px + 0.35 * size_px });
    span.textContent = line;
    text.appendChild(span);
  });
  svg.appendChild(text);
}

/** Draws a line through points given in pixels. */
export function drawPath(
  svg: SVGSVGElement,
  points: readonly (readonly [number, number])[],
  stroke: string,
  width_px = 1,
  dash?: string,
): void {
  const path = svg.ownerDocument.createElementNS(SVG, "path");
  const d = points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${tidy(x)},${tidy(y)}`).join("");
  setAll(path, { d, fill: "none", stroke, "stroke-width": width_px, ...(dash ? { "stroke-dasharray": dash } : {}) });
  svg.appendChild(path);
}

/** Fills a rectangle given in pixels. */
export function drawBox(svg: SVGSVGElement, x: number, y: number, width: number, height: number, fill: string): void {
  const box = svg.ownerDocument.createElementNS(SVG, "rect");
  setAll(box, { x: tidy(x), y: tidy(y), width: tidy(width), height: tidy(height), fill });
  svg.appendChild(box);
}

/** Draws dots of one look, in pixels. */
export function drawDots(
  svg: SVGSVGElement,
  dots: readonly { readonly x: number; readonly y: number; readonly r: number }[],
  look: Readonly<Record<string, string | number>>,
): void {
  const document = svg.ownerDocument;
  const group = document.createElementNS(SVG, "g");
  setAll(group, look);
  for (const { x, y, r } of dots) {
    const dot = document.createElementNS(SVG, "circle");
    setAll(dot, { cx: x, cy: y, r });
    group.appendChild(dot);
  }
  svg.appendChild(group);
}

function setAll(element: Element, attributes: Readonly<Record<string, string | number>>): void {
  for (const [name, value] of Object.entries(attributes)) {
    element.setAttribute(name, typeof value === "number" ? String(tidy(value)) : value);
  }
}

function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}

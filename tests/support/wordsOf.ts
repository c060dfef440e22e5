import { FONT_PX } from "../../web/charts/parts/figure/drawPlot.ts";
import { textWidth_px } from "../../web/charts/parts/figure/textWidth.ts";

/** A piece of text in a drawing and the pixels that it takes. */
export interface Word {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** Height of its base line. */
  readonly base: number;
  readonly size_px: number;
  /** Set by the chart itself and not by the scales of Plot. */
  readonly isName: boolean;
}

/** Every piece of text of a drawing, groups' shifts and nested drawings counted in. */
export function wordsOf(svg: SVGSVGElement): Word[] {
  return [...svg.querySelectorAll("text")].flatMap((text) => {
    const size_px = Number.parseFloat(inherited(text, "font-size") ?? String(FONT_PX));
    const anchor = inherited(text, "text-anchor") ?? "start";
    const spans = [...text.querySelectorAll("tspan")];
    const [right, down] = shift(text);
    return (spans.length > 0 ? spans : [text]).map((part) => {
      const x = Number(part.getAttribute("x") ?? 0) + right;
      // The table of widths adds five in a hundred; what it adds is no reason to fail.
      const width = textWidth_px(part.textContent ?? "", size_px) / 1.05;
      const from = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
      const base = Number(part.getAttribute("y") ?? 0) + down;
      return { text: part.textContent ?? "", from, to: from + width, base, size_px, isName: spans.length > 0 };
    });
  });
}

/** Pairs of words that lie upon each other: more than two pixels side by side, and nearer in height than letters are tall. */
export function overlapsOf(words: readonly Word[]): string[] {
  return words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.to, b.to) - Math.max(a.from, b.from);
      // Capitals stand about 0.67 of the font size above the base line.
      const isBeside = Math.abs(a.base - b.base) >= 0.67 * Math.min(a.size_px, b.size_px);
      return across > 2 && !isBeside ? [`${a.text} | ${b.text}`] : [];
    }),
  );
}

function inherited(element: Element, name: string): string | null {
  for (let at: Element | null = element; at; at = at.parentElement) {
    const value = at.getAttribute(name);
    if (value) return value;
  }
  return null;
}

function shift(element: Element): [number, number] {
  let right = 0;
  let down = 0;
  for (let at: Element | null = element; at; at = at.parentElement) {
    const [, x = "0", y = "0"] = /translate\((-?[\d.]+),?\s*(-?[\d.]+)?/.exec(at.getAttribute("transform") ?? "") ?? [];
    right += Number(x);
    down += Number(y);
    if (at !== element && at.tagName.toLowerCase() === "svg") {
      right += Number(at.getAttribute("x") ?? 0);
      down += Number(at.getAttribute("y") ?? 0);
    }
  }
  return [right, down];
}

import { type Plot, type PlotOptions, plot } from "@observablehq/plot";
import { face, ink } from "../../../look/tokens.ts";
import type { Drawing } from "./chart.ts";

export const FONT_PX = 13;
/** Height of a line of label. */
export const LINE_PX = 15;

/**
 * A Plot drawing in the figures' face and ink. Titles and legends stay out: they would wrap it in HTML. Plot's own style sheet
 * is taken out, since each one put into a page has the whole page styled anew; charts.css says what is needed of it.
 */
export function drawPlot(drawing: Drawing, options: PlotOptions): SVGSVGElement & Plot {
  const drawn = plot({
    ...options,
    document: drawing.document,
    width: drawing.width_px,
    style: { fontFamily: face, fontSize: `${FONT_PX}px`, color: ink, background: "none", overflow: "visible" },
  });
  if (drawn.tagName.toLowerCase() !== "svg") throw new Error(`a plot came back as ${drawn.tagName}, not as svg`);
  drawn.querySelector("style")?.remove();
  return drawn as SVGSVGElement & Plot;
}

import { parseHTML } from "linkedom";
import type { Drawing } from "../../web/charts/parts/figure/chart.ts";

/** A page in memory to draw on. */
export function drawing(width_px = 720): Drawing {
  return { document: parseHTML("<!doctype html><html><body></body></html>").document, width_px };
}

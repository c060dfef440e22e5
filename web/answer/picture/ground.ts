import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import * as look from "../../look/tokens.ts";
import type { Frame, Sides } from "./answerDrawing.ts";
import type { Draw } from "./svg.ts";

/** Tint where it would not get home, lines at round distances, and what they mean. */
export function ground(
  pen: Draw,
  { axis, toPixel, top_px, bottom_px }: Frame,
  { left_px, right_px, isNarrow, units }: Sides & { readonly units: UnitHabit },
): SVGElement[] {
  const home_px = toPixel(0);
  const unit = units === "metric" ? "km" : "miles";
  const out: SVGElement[] = [
    pen("rect", {
      class: "tint",
      x: left_px,
      y: top_px,
      width: home_px - left_px,
      height: bottom_px - top_px,
      fill: look.tint,
    }),
  ];
  for (const tick of axis.ticks) {
    const x_px = toPixel(tick);
    if (tick !== 0) {
      out.push(
        pen("line", {
          class: "grid",
          x1: x_px,
          x2: x_px,
          y1: top_px,
          y2: bottom_px,
          stroke: look.rule,
          "stroke-width": 1,
        }),
      );
    }
    const words = tick === 0 ? "home" : tick < 0 ? `${-tick} short` : `${tick}`;
    const isCut = x_px < left_px + 22 || x_px > right_px - 8;
    const isBesideHome = tick < 0 && home_px - x_px < 56;
    if (tick === 0 || !(isCut || isBesideHome)) {
      out.push(
        pen(
          "text",
          { x: x_px, y: bottom_px + 18, "text-anchor": "middle", ...(tick === 0 && { "font-weight": 700 }) },
          words,
        ),
      );
    }
  }
  const before = isNarrow ? "not home" : "would not get home";
  if (home_px - left_px > (isNarrow ? 66 : 134) || !isNarrow) {
    out.push(pen("text", { x: home_px - 8, y: 17, "text-anchor": "end" }, before));
  }
  const after = isNarrow ? `home, with … ${unit} left` : `home, with this many ${unit} left`;
  out.push(pen("text", { x: home_px + 8, y: 17 }, after));
  return out;
}

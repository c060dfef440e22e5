import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { ROW_PX } from "../../../../../web/charts/parts/figure/inRows.ts";
import { drawRampKey, rampKeyHeight_px } from "../../../../../web/charts/parts/keys/rampKey.ts";
import { steppedRamp } from "../../../../../web/charts/parts/keys/steppedRamp.ts";

const key = steppedRamp(0, 6);

/** Left edge, top and colour of every swatch. */
function swatches(space_px: number) {
  const { document } = new JSDOM("<svg></svg>").window;
  const svg = document.querySelector("svg") as SVGSVGElement;
  drawRampKey(svg, key, "Current (A)", 10, 100, space_px);
  expect(svg.textContent).toBe(["Current (A)", ...key.steps.map(({ words }) => words)].join(""));
  return [...svg.querySelectorAll("rect")].map((box) => ({
    x: Number(box.getAttribute("x")),
    y: Number(box.getAttribute("y")),
    colour: box.getAttribute("fill"),
  }));
}

it("stands in one row beside its title where there is room", () => {
  expect(rampKeyHeight_px(key, "Current (A)", 2000)).toBe(ROW_PX);
  const drawn = swatches(2000);
  expect(drawn.map(({ colour }) => colour)).toEqual(key.steps.map(({ colour }) => colour));
  expect(new Set(drawn.map(({ y }) => y))).toEqual(new Set([103]));
  expect(drawn[0].x).toBeGreaterThan(10 + 12);
});

it("stands below its title, in as many rows as it takes, where there is none", () => {
  // As narrow as one entry: a row for the title and one for each step.
  expect(rampKeyHeight_px(key, "Current (A)", 60)).toBe((key.steps.length + 1) * ROW_PX);
  expect(swatches(60).map(({ x, y }) => [x, y])).toEqual(key.steps.map((_, i) => [10, 103 + (i + 1) * ROW_PX]));
});

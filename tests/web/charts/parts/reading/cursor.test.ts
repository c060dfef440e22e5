import { JSDOM } from "jsdom";
import { beforeEach, expect, it } from "vitest";
import type { Position } from "../../../../../web/charts/parts/figure/chart.ts";
import { CURSOR_CLASS, drawCursor } from "../../../../../web/charts/parts/reading/cursor.ts";

const { document } = new JSDOM("<svg></svg>").window;
const svg = document.querySelector("svg") as SVGSVGElement;

const position: Position = {
  quantity: "distance_m",
  first: 0,
  last: 100,
  step: 1,
  isVertical: false,
  from_px: 10,
  to_px: 90,
  toPixel: (at) => 40 + 2 * at,
  fromPixel: (pixel) => (pixel - 40) / 2,
};

/** Some attributes of the only reading line that is drawn. */
function drawn(...names: string[]) {
  const cursors = svg.querySelectorAll(`.${CURSOR_CLASS}`);
  expect(cursors).toHaveLength(1);
  return [cursors[0].tagName, ...names.map((name) => Number(cursors[0].getAttribute(name)))];
}

beforeEach(() => svg.replaceChildren());

it("draws one line across the figure, and takes it away where there is no position", () => {
  drawCursor(svg, position, 5);
  drawCursor(svg, position, 10);
  expect(drawn("x1", "x2", "y1", "y2")).toEqual(["line", 60, 60, 10, 90]);
  drawCursor(svg, position, undefined);
  expect(svg.children).toHaveLength(0);
});

it("draws it level on a figure that is read upwards, and as a ring on a track", () => {
  drawCursor(svg, { ...position, isVertical: true }, 10);
  expect(drawn("x1", "x2", "y1", "y2")).toEqual(["line", 10, 90, 60, 60]);
  drawCursor(svg, { ...position, toPoint: (at) => [at, 3 * at] }, 10);
  expect(drawn("cx", "cy")).toEqual(["circle", 10, 30]);
});

import { expect, it } from "vitest";
import { stackFigures } from "../../../../../web/charts/parts/figure/stackFigures.ts";
import { drawing } from "../../../../support/drawing.ts";

const page = drawing();
const part = (width: number, height: number) => {
  const svg = page.document.createElementNS("http://www.w3.org/2000/svg", "svg");
  svg.setAttribute("width", String(width));
  svg.setAttribute("height", String(height));
  return svg;
};
const placeOf = (svg: Element) => [svg.getAttribute("x"), svg.getAttribute("y")];

it("puts figures row under row, each row as high as its highest", () => {
  const parts = [part(100, 40), part(100, 60), part(100, 30)];
  const whole = stackFigures(page, parts, 2);
  expect(parts.map(placeOf)).toEqual([
    ["0", "0"],
    ["100", "0"],
    ["0", "60"],
  ]);
  expect(whole.getAttribute("viewBox")).toBe("0 0 200 90");
});

it("leaves a single one alone", () => {
  const only = part(100, 40);
  expect(stackFigures(page, [only])).toBe(only);
});

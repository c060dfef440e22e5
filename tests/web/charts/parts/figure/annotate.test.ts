import { expect, it } from "vitest";
import { drawBox, drawDots, drawPath, writeWords } from "../../../../../web/charts/parts/figure/annotate.ts";
import { drawing } from "../../../../support/drawing.ts";

const page = drawing();
const sheet = () => page.document.createElementNS("http://www.w3.org/2000/svg", "svg");

it("writes lines about their middle, with a rim where asked", () => {
  const svg = sheet();
  writeWords(svg, { x: 10, y: 50, lines: ["one", "two"], isHaloed: true });
  const heights = [...svg.querySelectorAll("tspan")].map((span) => Number(span.getAttribute("y")));
  expect(svg.querySelector("text")?.getAttribute("paint-order")).toBe("stroke");
  expect([...svg.querySelectorAll("tspan")].map((span) => span.textContent)).toEqual(["one", "two"]);
  expect(heights[1]).toBeGreaterThan(heights[0]);
});

it("draws paths, boxes and dots in hundredths of a pixel", () => {
  const svg = sheet();
  drawPath(
    svg,
    [
      [0, 0],
      [10.123, 5.678],
    ],
    "#000",
    1,
    "2 2",
  );
  drawBox(svg, 1, 2, 3.333, 4, "#fff");
  drawDots(svg, [{ x: 1, y: 2, r: 3 }], { fill: "#000" });
  expect(svg.querySelector("path")?.getAttribute("d")).toBe("M0,0L10.12,5.68");
  expect(svg.querySelector("rect")?.getAttribute("width")).toBe("3.33");
  expect(svg.querySelectorAll("g circle")).toHaveLength(1);
});

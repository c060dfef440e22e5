import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { LINE_PX } from "../../../../../web/charts/parts/figure/drawPlot.ts";
import { endLabels } from "../../../../../web/charts/parts/lines/endLabels.ts";

it("leads each name from the end of its line, and keeps names of lines that end alike apart", () => {
  const { document } = new JSDOM("<svg></svg>").window;
  const svg = document.querySelector("svg") as SVGSVGElement;
  const label = (name: string, y: number) => ({ lines: [name], x: 300, y, colour: "#123456" });
  endLabels(svg, [label("one", 100), label("two", 100), label("three", 30)], 340, 0, 200);
  const starts = [...svg.querySelectorAll("path")].map((path) =>
    path.getAttribute("d")?.match(/^M\s*([\d.]+)[ ,]([\d.]+)/),
  );
  expect(starts.map((start) => start?.slice(1).map(Number))).toEqual([
    [305, 100],
    [305, 100],
    [305, 30],
  ]);
  const ends = [...svg.querySelectorAll("path")].map((path) => Number(path.getAttribute("d")?.match(/([\d.]+)$/)?.[1]));
  expect(Math.abs(ends[0] - ends[1])).toBeGreaterThanOrEqual(LINE_PX);
  expect(ends[2]).toBeCloseTo(30, 6);
  expect(svg.textContent).toBe("onetwothree");
});

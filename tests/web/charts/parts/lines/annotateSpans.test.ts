import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { FONT_PX } from "../../../../../web/charts/parts/figure/drawPlot.ts";
import { textWidth_px } from "../../../../../web/charts/parts/figure/textWidth.ts";
import { annotateSpans } from "../../../../../web/charts/parts/lines/annotateSpans.ts";

const frame = { left: 50, right: 250, top: 30, bottom: 110, height: 150, x: [0, 20], y: [0, 1] } as const;

/** Words and their middles. */
function written(spans: Parameters<typeof annotateSpans>[2]) {
  const { document } = new JSDOM("<svg></svg>").window;
  const svg = document.querySelector("svg") as SVGSVGElement;
  annotateSpans(svg, frame, spans);
  return [...svg.querySelectorAll("text")].map((text) => ({
    words: text.textContent,
    x: Number((text.querySelector("tspan") ?? text).getAttribute("x")),
  }));
}

it("writes over the middle of a span, but never beyond the frame", () => {
  const half = textWidth_px("stand", FONT_PX) / 2;
  expect(written([{ from: 8, to: 12, words: "stand" }])).toEqual([{ words: "stand", x: 150 }]);
  const [first] = written([{ from: 0, to: 1, words: "stand" }]);
  expect(first.x).toBeCloseTo(50 + half, 1);
  const [last] = written([{ from: 19, to: 20, words: "stand" }]);
  expect(last.x).toBeCloseTo(250 - half, 1);
});

it("leaves out words that would run into those before", () => {
  const spans = [8, 9, 16].map((from) => ({ from, to: from + 1, words: `s${from}` }));
  expect(written(spans).map(({ words }) => words)).toEqual(["s8", "s16"]);
});

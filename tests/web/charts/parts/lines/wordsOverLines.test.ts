import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { FONT_PX } from "../../../../../web/charts/parts/figure/drawPlot.ts";
import { textWidth_px } from "../../../../../web/charts/parts/figure/textWidth.ts";
import { wordsOverLines } from "../../../../../web/charts/parts/lines/wordsOverLines.ts";
import { paper } from "../../../../../web/look/tokens.ts";

it("lays a strip of paper as long as its words beneath them", () => {
  const { document } = new JSDOM().window;
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  wordsOverLines(svg, "8 kWh, enough", { x: 20, y: 50, strip_px: 15 });
  const [strip, text] = svg.children;
  expect([strip.tagName, text.tagName]).toEqual(["path", "text"]);
  expect(strip.getAttribute("stroke")).toBe(paper);
  expect(strip.getAttribute("stroke-width")).toBe("15");
  const [from, to] = [...(strip.getAttribute("d") ?? "").matchAll(/[ML]([\d.]+),50/g)].map(([, x]) => Number(x));
  expect(from).toBeLessThan(20);
  expect(to).toBeGreaterThan(20 + textWidth_px("8 kWh, enough", FONT_PX));
  expect(text.textContent).toBe("8 kWh, enough");
});

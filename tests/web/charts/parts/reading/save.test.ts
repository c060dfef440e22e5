import { JSDOM } from "jsdom";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { drawCursor } from "../../../../../web/charts/parts/reading/cursor.ts";
import { csvText, svgText } from "../../../../../web/charts/parts/reading/save.ts";
import { figures } from "../../../../support/inventedFigures.ts";

describe("svgText", () => {
  const { window } = new JSDOM("<!doctype html><body></body>");
  const drawn = Object.entries(figures).map(([name, draw]) => ({
    name,
    chart: draw({ document: window.document, width_px: 720 }),
  }));

  it.each(drawn)("$name is well-formed XML of its own, with its words and paper behind it", ({ chart }) => {
    const text = svgText(chart);
    const parsed = new window.DOMParser().parseFromString(text, "image/svg+xml");
    expect(parsed.querySelector("parsererror")).toBeNull();
    expect(parsed.documentElement.namespaceURI).toBe("http://www.w3.org/2000/svg");
    expect(parsed.querySelector("title")?.textContent).toBe(chart.alt);
    expect(parsed.documentElement.getAttribute("width")).toBe("720");
    expect(text).not.toMatch(/\b(href|src)=|url\(http|var\(--/);
  });

  it("leaves the reading line out and the figure on the page as it was", () => {
    const { chart } = drawn[1] as (typeof drawn)[number];
    if (!chart.position) throw new Error("this figure can be read");
    const before = svgText(chart);
    drawCursor(chart.svg, chart.position, chart.position.last);
    expect(svgText(chart)).toBe(before);
    expect(chart.svg.querySelector(".figure-cursor")).not.toBeNull();
  });

  it("carries the face where one is given", () => {
    const { chart } = drawn[0] as (typeof drawn)[number];
    expect(svgText(chart, "@font-face{font-family:Handbook;src:url(data:font/woff2;base64,AA)}")).toContain(
      "@font-face",
    );
  });
});

describe("csvText", () => {
  it("writes keys with units, full numbers and rows that come back as they went in", () => {
    const table = {
      columns: [
        { name: "pack", label: "Pack" },
        { name: "battery_A", label: "Battery current (A)" },
      ],
      rows: [
        ['Six, "big"', -12.345678901234],
        ["Two", 0.1],
      ],
    };
    const parsed = Papa.parse<string[]>(csvText(table));
    expect(parsed.errors).toEqual([]);
    expect(parsed.data).toEqual([
      ["pack", "battery_A"],
      ['Six, "big"', "-12.345678901234"],
      ["Two", "0.1"],
    ]);
  });

  it.each(["=1+1", "+A1", "-A1", "@sum", "\t=1"])("lets no spreadsheet run a pack called %s", (name) => {
    const text = csvText({ columns: [{ name: "pack", label: "Pack" }], rows: [[name]] });
    expect(text.split("\r\n")[1]).toMatch(/^"?'/);
  });
});

import { describe, expect, it } from "vitest";
import type { Chart } from "../../../web/charts/parts/figure/chart.ts";
import { MILES } from "../../../web/charts/parts/figure/figureUnits.ts";
import { drawing } from "../../support/drawing.ts";
import { figures } from "../../support/inventedFigures.ts";
import { overlapsOf, wordsOf } from "../../support/wordsOf.ts";

const cases = Object.entries(figures);
const widths = [320, 340, 720, 1200];

const unfinished = /NaN|Infinity|undefined|null|\[object/;

describe.each(cases)("%s", (_, draw) => {
  it("is one picture with its words as its name, and nothing inside it is named", () => {
    const { svg, alt } = draw(drawing());
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.getAttribute("aria-label")).toBe(alt);
    expect(svg.querySelectorAll("[aria-label],[role],[aria-description]").length).toBe(0);
  });

  it("says in its words what it shows, with numbers", () => {
    const { alt } = draw(drawing());
    expect(alt).toMatch(/\d/);
    expect(alt).toMatch(/[.]$/);
    expect(alt).not.toMatch(unfinished);
  });

  it.each(widths)("draws only numbers, at %i px", (width) => {
    const { svg } = draw(drawing(width));
    expect(svg.outerHTML).not.toMatch(unfinished);
    expect(Number(svg.getAttribute("width"))).toBe(width);
  });

  it.each(widths)("keeps its words within its width, at %i px", (width) => {
    const { svg } = draw(drawing(width));
    const words = wordsOf(svg);
    expect(words.length).toBeGreaterThan(5);
    const outside = words.filter(({ from, to }) => from < -1 || to > width + 1);
    expect(outside).toEqual([]);
  });

  it.each(widths)("lays no name upon another, at %i px", (width) => {
    const names = wordsOf(draw(drawing(width)).svg).filter((word) => word.isName);
    expect(names.length).toBeGreaterThan(0);
    expect(overlapsOf(names)).toEqual([]);
  });

  it("tells its data in a table of full rows with a unit in each heading that needs one", () => {
    const { table } = draw(drawing());
    expect(table.rows.length).toBeGreaterThan(0);
    for (const row of table.rows) {
      expect(row.length).toBe(table.columns.length);
      for (const value of row) if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
    }
    table.columns.forEach(({ name, label }, k) => {
      const isNumber = table.rows.every((row) => typeof row[k] === "number");
      if (isNumber) expect(`${name} ${label}`).toMatch(/_\w+ .*\(.+\)$|^days /);
    });
  });

  it("reads values at both ends and in the middle", () => {
    const chart = draw(drawing());
    const { position } = chart;
    if (!position) throw new Error("nothing can be read of this figure");
    for (const share of [0, 0.37, 1]) {
      const reading = chart.read(position.first + share * (position.last - position.first));
      expect(reading.where).toMatch(/\S/);
      expect(reading.values.length).toBeGreaterThan(0);
      for (const { text } of reading.values) expect(text).not.toMatch(/NaN|unknown|undefined/);
    }
  });

  it("reads the nearest end beyond its ends", () => {
    const chart = draw(drawing());
    const { first, last } = chart.position as NonNullable<Chart["position"]>;
    expect(chart.read(first - 1e6)).toEqual(chart.read(first));
    expect(chart.read(last + 1e6)).toEqual(chart.read(last));
  });

  it("finds a position again from its pixel", () => {
    const { position } = draw(drawing());
    if (!position) throw new Error("nothing can be read of this figure");
    const at = position.first + 0.4 * (position.last - position.first);
    if (position.toPoint) {
      // A track is drawn through part of its samples: the nearest of them is nearer than a finger is wide.
      const [x, y] = position.toPoint(at);
      const found = position.toPoint(position.fromPixel(x, y));
      expect(Math.hypot(found[0] - x, found[1] - y)).toBeLessThan(4);
      expect(
        Math.hypot(position.toPoint(position.last)[0] - x, position.toPoint(position.last)[1] - y),
      ).toBeGreaterThan(4);
      return;
    }
    expect(position.fromPixel(position.toPixel(at), 0)).toBeCloseTo(at, 6);
    expect(position.toPixel(position.first)).toBeGreaterThanOrEqual(0);
    expect(position.toPixel(position.last)).toBeGreaterThanOrEqual(position.toPixel(position.first));
  });

  it("shows no kilometre where miles are asked for", () => {
    const chart = draw({ ...drawing(), units: MILES });
    const told = `${chart.svg.textContent} ${chart.alt} ${chart.table.columns.map((column) => column.label).join()}`;
    expect(told).not.toMatch(/\bkm|Wh\/km|\bNm\b/);
  });
});

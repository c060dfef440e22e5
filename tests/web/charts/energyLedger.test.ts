import { describe, expect, it } from "vitest";
import { energyLedger } from "../../../web/charts/energyLedger.ts";
import { highlight } from "../../../web/look/tokens.ts";
import { inventedLedgers } from "../../logs/inventedDrive.ts";
import { drawing } from "../../support/drawing.ts";

type Ledger = (typeof inventedLedgers)[0];
const first = inventedLedgers[0] as Ledger;
const perKm = (pack: Ledger) => (pack.ledger_Wh.total - pack.ledger_Wh.packHeat) / pack.distance_km;

/** Left edge, width and fill of each rectangle, by its place down the figure. */
function pieces(svg: SVGSVGElement) {
  return [...svg.querySelectorAll("rect")].map((rect) => ({
    x: Number(rect.getAttribute("x")),
    width: Number(rect.getAttribute("width")),
    fill: rect.getAttribute("fill"),
  }));
}

describe("energyLedger", () => {
  it("draws the chosen pack in full: pieces in proportion to what leaves the pack, the largest in the highlight", () => {
    const { svg } = energyLedger(inventedLedgers, { ...drawing(), chosen: 0 });
    const { total: _, packHeat: __, ...parts } = first.ledger_Wh;
    const values = Object.values(parts).filter((value) => value !== 0);
    const bar = pieces(svg).slice(0, values.length);
    const scale =
      bar.reduce((sum, { width }) => sum + width, 0) / values.reduce((sum, value) => sum + Math.abs(value), 0);
    // Pixels are printed to hundredths and pieces to whole insets, a pixel in some hundreds.
    for (const [i, { width }] of bar.entries())
      expect(Math.abs(width - scale * Math.abs(values[i] ?? 0))).toBeLessThan(2);
    const widest = bar.reduce((a, b) => (b.width > a.width ? b : a));
    expect(bar.filter(({ fill }) => fill === highlight)).toEqual([widest]);
  });

  it("draws the others as differences from it, and says so", () => {
    const { alt, svg } = energyLedger(inventedLedgers, { ...drawing(), chosen: 0 });
    let compared = 0;
    for (const pack of inventedLedgers.slice(1)) {
      const difference = perKm(pack) - perKm(first);
      const size = Number(Math.abs(difference).toFixed(1));
      const words =
        size === 0 ? "the same as" : `${Number(size.toPrecision(3))} Wh/km ${difference < 0 ? "less" : "more"} than`;
      expect(alt).toContain(`${pack.name}: ${words} ${first.name}.`);
      compared++;
    }
    expect(compared).toBe(2);
    expect(svg.textContent).toContain(`More or less than ${first.name}`);
  });

  it("puts what is given back to the left of zero", () => {
    // The third pack ends lower than it began.
    const { svg } = energyLedger(inventedLedgers, { ...drawing(), chosen: 2 });
    const least = energyLedger(inventedLedgers, { ...drawing(), chosen: 0 });
    const zero = (of: SVGSVGElement) => Math.min(...pieces(of).map(({ x }) => x));
    expect(zero(svg)).toBeLessThanOrEqual(zero(least.svg));
    expect(svg.querySelectorAll("line").length).toBeGreaterThan(least.svg.querySelectorAll("line").length);
  });

  it("reads a pack that stands alone part by part, from left to right, with its share of the whole", () => {
    const { position, read } = energyLedger([first], drawing());
    if (!position) throw new Error("nothing to read");
    const { total, packHeat, ...parts } = first.ledger_Wh;
    const there = Object.values(parts).filter((value) => value !== 0);
    expect(position.isVertical).toBe(false);
    expect(position.last).toBe(there.length - 1);
    const places = there.map((_, i) => i);
    const pixels = places.map(position.toPixel);
    expect(pixels).toEqual(pixels.toSorted((a, b) => a - b));
    expect(new Set(places.map((at) => read(at).where)).size).toBe(there.length);
    const shares = places.map((at) => Number.parseInt(read(at).values[1]?.text ?? "", 10));
    const expected = there.map((value) => Math.round((100 * value) / (total - packHeat)));
    expect(shares.toSorted((a, b) => a - b)).toEqual(expected.toSorted((a, b) => a - b));
  });

  it("names every entry of the chosen bar that can be seen", () => {
    const { svg } = energyLedger(inventedLedgers, drawing(340));
    for (const name of ["air", "rolling", "climbing", "driveline", "motor and controller", "friction brakes"]) {
      expect(svg.textContent).toContain(name);
    }
  });

  it("tells total and parts in Wh over the distance covered, at the pack's terminals", () => {
    const { table } = energyLedger(inventedLedgers, drawing());
    const total = table.rows[0]?.at(-1) as number;
    expect(total).toBeCloseTo(perKm(first), 9);
    const parts = table.rows[0]?.slice(1, -1) as number[];
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(total, 9);
  });

  it("leaves out a pack that went nowhere", () => {
    const stuck = { ...first, distance_km: 0 };
    expect(energyLedger([stuck], drawing()).alt).toMatch(/No pack covered any distance/);
    expect(energyLedger([stuck, ...inventedLedgers], drawing()).table.rows.length).toBe(3);
  });

  it("alone, draws no differences", () => {
    expect(energyLedger([first], drawing()).svg.textContent).not.toContain("More or less");
  });
});

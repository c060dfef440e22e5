import { describe, expect, it } from "vitest";
import { energyLedger } from "../../../web/charts/energyLedger.ts";
import { drawing } from "../../support/drawing.ts";
import { inventedLedgers } from "../../support/inventedDrive.ts";

/** Left edge and width of each bar's pieces, in pixels; pieces of one bar lie at one height. */
function pieces(svg: SVGSVGElement): { x: number; width: number }[][] {
  const bars = new Map<number, { x: number; width: number }[]>();
  for (const rect of svg.querySelectorAll("rect")) {
    const [x = 0, y = 0, width = 0] = ["x", "y", "width"].map((name) => Number(rect.getAttribute(name)));
    bars.set(y, [...(bars.get(y) ?? []), { x, width }]);
  }
  return [...bars.values()];
}

describe("energyLedger", () => {
  it("draws one bar a pack whose pieces add up to the ledger, on the same scale", () => {
    const { svg } = energyLedger(inventedLedgers, drawing());
    const bars = pieces(svg);
    expect(bars.length).toBe(inventedLedgers.length);
    const scales = bars.map((bar, i) => {
      const { total: _, ...parts } = (inventedLedgers[i] as (typeof inventedLedgers)[0]).ledger_Wh;
      const drawn = bar.reduce((sum, piece) => sum + piece.width, 0);
      return drawn / Object.values(parts).reduce((sum, part) => sum + Math.abs(part), 0);
    });
    // Pixels are printed to hundredths and pieces to whole insets, a pixel in some hundreds.
    for (const scale of scales) expect(scale / (scales[0] as number)).toBeCloseTo(1, 2);
  });

  it("puts what is given back to the left of zero", () => {
    const { svg } = energyLedger(inventedLedgers, drawing());
    const lefts = pieces(svg).map((bar) => Math.min(...bar.map((piece) => piece.x)));
    // The third pack ends lower than it began.
    expect(lefts[2]).toBeLessThan(lefts[0] as number);
    expect(lefts[1]).toBe(lefts[0]);
  });

  it("names every entry of the first bar that can be seen", () => {
    const { svg } = energyLedger(inventedLedgers, drawing(340));
    for (const name of ["air", "rolling", "climbing", "driveline", "motor and controller", "friction brakes"]) {
      expect(svg.textContent).toContain(name);
    }
  });

  it("tells total and parts in Wh over the distance covered", () => {
    const { table } = energyLedger(inventedLedgers, drawing());
    const total = table.rows[0]?.at(-1) as number;
    expect(total).toBeCloseTo((inventedLedgers[0] as (typeof inventedLedgers)[0]).ledger_Wh.total / 10, 9);
    const parts = table.rows[0]?.slice(1, -1) as number[];
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(total, 9);
  });

  it("leaves out a pack that went nowhere", () => {
    const stuck = { ...(inventedLedgers[0] as (typeof inventedLedgers)[0]), distance_km: 0 };
    expect(energyLedger([stuck], drawing()).alt).toMatch(/No pack covered any distance/);
    expect(energyLedger([stuck, ...inventedLedgers], drawing()).table.rows.length).toBe(3);
  });
});

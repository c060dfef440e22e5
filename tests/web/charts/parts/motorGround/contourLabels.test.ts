import { describe, expect, it } from "vitest";
import { contourLabels } from "../../../../../web/charts/parts/motorGround/contourLabels.ts";
import { regularGrid } from "../../../../../web/charts/parts/motorGround/regularGrid.ts";

describe("contourLabels", () => {
  const plane = regularGrid([0, 100], [0, 100], [0, 0, 100, 100], 50, 50); // value = y
  const pixel = { x: (at: number) => at * 4, y: (at: number) => 400 - at * 4, width: () => 30 };

  it("puts each number on its contour, within what is allowed", () => {
    const labels = contourLabels(plane, [20, 50, 80], pixel, (at) => at < 60);
    expect(labels.map((label) => label.level)).toEqual([20, 50, 80]);
    for (const { level, x: left, y: top } of labels) {
      expect(top).toBeCloseTo(400 - level * 4, 6);
      expect(left).toBeLessThan(60 * 4);
    }
  });

  it("keeps numbers of near contours apart", () => {
    const labels = contourLabels(plane, [50, 51, 52], pixel, () => true);
    for (const a of labels) {
      for (const b of labels) {
        if (a !== b) expect(Math.abs(a.x - b.x) >= 30 || Math.abs(a.y - b.y) >= 14).toBe(true);
      }
    }
    expect(labels.length).toBe(3);
  });

  it("writes the number of a contour that runs straight up or nearly so on it, within what is allowed", () => {
    for (const lean of [0, 1e-3]) {
      const upright = regularGrid([0, 100], [0, 100], [0, 100, 0 + lean, 100 + lean], 50, 50); // value = x, nearly
      const labels = contourLabels(upright, [20, 55], pixel, (_, y) => y < 50);
      expect(labels.map(({ level }) => level)).toEqual([20, 55]);
      for (const { level, x: left, y: top } of labels) {
        // A pixel is a quarter; what leans is 1e-3 off at most.
        expect(Math.abs(left - level * 4)).toBeLessThanOrEqual(0.01);
        expect(top).toBeGreaterThan(400 - 50 * 4);
      }
    }
  });

  it("leaves out a number that would reach over a side: of 36 px with its margins, 18 px of its middle at least are free", () => {
    const upright = regularGrid([0, 100], [0, 100], [0, 100, 0, 100], 50, 50); // value = x, four pixels each
    const levels = contourLabels(upright, [4, 5, 95, 97], pixel, () => true).map(({ level }) => level);
    expect(levels).toEqual([5, 95]);
  });

  it("leaves out a contour that is nowhere to be seen", () => {
    expect(contourLabels(plane, [500], pixel, () => true)).toEqual([]);
  });
});

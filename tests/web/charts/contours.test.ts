import { describe, expect, it } from "vitest";
import { contourLabels } from "../../../web/charts/parts/motorGround/contourLabels.ts";
import { regularGrid } from "../../../web/charts/parts/motorGround/regularGrid.ts";

const x = [0, 1, 5, 20];
const y = [-10, -2, 0, 30];
const table = y.flatMap((b) => x.map((a) => 3 * a - 2 * b + 0.5 * a * b));

describe("regularGrid", () => {
  it("gives a bilinear table back exactly at the middle of every field", () => {
    const grid = regularGrid(x, y, table, 7, 9);
    let compared = 0;
    for (let row = 0; row < 9; row++) {
      for (let column = 0; column < 7; column++) {
        const a = ((column + 0.5) / 7) * 20;
        const b = -10 + ((row + 0.5) / 9) * 40;
        expect(grid.values[row * 7 + column]).toBeCloseTo(3 * a - 2 * b + 0.5 * a * b, 9);
        compared++;
      }
    }
    expect(compared).toBe(63);
  });
});

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

  it("leaves out a contour that is nowhere to be seen", () => {
    expect(contourLabels(plane, [500], pixel, () => true)).toEqual([]);
  });
});

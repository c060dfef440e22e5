import { describe, expect, it } from "vitest";
import { regularGrid } from "../../../../../web/charts/parts/motorGround/regularGrid.ts";

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

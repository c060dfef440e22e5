import { describe, expect, it } from "vitest";
import { intervalAt, lineAt } from "../../../../../web/charts/parts/figure/columnAt.ts";

describe("lineAt", () => {
  const x = [0, 10, 10, 20];
  const y = [0, 5, 7, 9];
  it("is the straight line between rows and the end values beyond them", () => {
    expect([-1, 0, 4, 15, 20, 99].map((at) => lineAt(x, y, 4, at))).toEqual([0, 0, 2, 8, 9, 9]);
  });
  it("takes the last of rows at the same place, as a stop has", () => {
    expect(lineAt(x, y, 4, 10)).toBe(7);
  });
  it("counts only the rows filled", () => {
    expect(lineAt(x, y, 2, 99)).toBe(5);
  });
});

describe("intervalAt", () => {
  it("is the row at whose end the interval closes", () => {
    expect([0, 0.5, 1, 1.5, 9].map((at) => intervalAt([0, 1, 2], 3, at))).toEqual([0, 1, 1, 2, 2]);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { thin } from "../../../../../web/charts/parts/lines/thin.ts";

describe("thin", () => {
  it("keeps every row of a short series", () => {
    expect(thin([0, 1, 2], [5, 1, 3], 3, 10)).toEqual([0, 1, 2]);
    expect(thin([], [], 0, 10)).toEqual([]);
  });

  it("keeps ends, lowest and highest of any series, in order, at most four a column", () => {
    const series = fc.array(
      fc.tuple(fc.double({ min: 0, max: 9, noNaN: true }), fc.double({ min: -1e6, max: 1e6, noNaN: true })),
      {
        minLength: 50,
        maxLength: 400,
      },
    );
    fc.assert(
      fc.property(series, (steps) => {
        let at = 0;
        const x = steps.map(([step]) => (at += step));
        const y = steps.map(([, value]) => value);
        const kept = thin(x, y, y.length, 10);
        expect(kept.length).toBeLessThanOrEqual(4 * 11);
        expect(kept[0]).toBe(0);
        expect(kept.at(-1)).toBe(y.length - 1);
        expect(kept).toEqual([...new Set(kept)].sort((a, b) => a - b));
        const values = kept.map((row) => y[row] as number);
        expect(Math.max(...values)).toBe(Math.max(...y));
        expect(Math.min(...values)).toBe(Math.min(...y));
      }),
      { seed: 11, numRuns: 100 },
    );
  });

  it("keeps a spike of one row among a hundred thousand, and looks past gaps", () => {
    const x = Float64Array.from({ length: 100_000 }, (_, i) => i);
    const y = x.map((_, i) => (i === 77_777 ? 9 : i % 500 === 0 ? Number.NaN : 0));
    expect(thin(x, y, y.length, 300)).toContain(77_777);
  });

  it("holds where x stands still, as distance does at a stop", () => {
    const kept = thin(
      new Float64Array(1000),
      Float64Array.from({ length: 1000 }, (_, i) => Math.sin(i)),
      1000,
      50,
    );
    expect(kept.length).toBeLessThanOrEqual(4);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../../../web/charts/parts/lines/spread.ts";

describe("spread", () => {
  it("leaves labels that stand clear where they want to be", () => {
    expect(spread([10, 60, 120], [15, 15, 15], 0, 200)).toEqual([10, 60, 120]);
  });

  it("keeps any labels that fit apart, in order and within the ends", () => {
    const labels = fc.array(
      fc.record({ at: fc.double({ min: -50, max: 350, noNaN: true }), size: fc.integer({ min: 5, max: 30 }) }),
      {
        minLength: 1,
        maxLength: 10,
      },
    );
    fc.assert(
      fc.property(labels, (each) => {
        const size = each.map((label) => label.size);
        const centres = spread(
          each.map((label) => label.at),
          size,
          0,
          300,
        );
        const order = each.map((_, i) => i).sort((a, b) => (each[a]?.at ?? 0) - (each[b]?.at ?? 0) || a - b);
        let edge = -1e-9;
        for (const i of order) {
          const half = (size[i] as number) / 2;
          expect((centres[i] as number) - half).toBeGreaterThanOrEqual(edge - 1e-9);
          edge = (centres[i] as number) + half;
        }
        expect(edge).toBeLessThanOrEqual(300 + 1e-9);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("lets them overlap evenly where there is no room", () => {
    expect(spread([5, 5], [20, 20], 0, 20)).toEqual([5, 15]);
  });
});

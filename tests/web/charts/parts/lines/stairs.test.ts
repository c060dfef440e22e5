import { describe, expect, it } from "vitest";
import { stairs } from "../../../../../web/charts/parts/lines/stairs.ts";

const labels = [
  { at: 10, width: 50 },
  { at: 30, width: 50 },
  { at: 200, width: 50 },
  { at: 290, width: 50 },
  { at: 295, width: 80 },
];

describe("stairs", () => {
  it("keeps every name left of the right edge and every lead line in the order of the things", () => {
    const { x } = stairs(labels, 300);
    labels.forEach((label, i) => {
      expect((x[i] as number) + label.width).toBeLessThanOrEqual(300);
      if (i > 0) expect(x[i] as number).toBeGreaterThan(x[i - 1] as number);
    });
  });

  it("puts a name above every later one that begins beneath it, so that no lead line crosses a name", () => {
    const { x, step } = stairs(labels, 300);
    let beneath = 0;
    for (let i = 0; i < labels.length; i++) {
      for (let j = i + 1; j < labels.length; j++) {
        const beginsBeneath = (x[j] as number) < (x[i] as number) + (labels[i] as { width: number }).width;
        if (!beginsBeneath) continue;
        beneath += 1;
        expect(step[i]).toBeGreaterThan(step[j] as number);
      }
    }
    expect(beneath).toBeGreaterThan(1);
  });

  it("needs one step where the names stand clear of one another, and none without names", () => {
    expect(
      stairs(
        [
          { at: 0, width: 20 },
          { at: 40, width: 20 },
        ],
        300,
      ).height,
    ).toBe(1);
    expect(stairs([], 300).height).toBe(0);
  });
});

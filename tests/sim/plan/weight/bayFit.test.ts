import { describe, expect, it } from "vitest";
import { countOf } from "../../../../sim/plan/weight/bayFit.ts";

const module = { length_mm: 300, width_mm: 200, height_mm: 150 };

const room = { length_mm: 650, width_mm: 450, height_mm: 320 };

describe("modules in a box, worked by hand with 10 mm all round", () => {
  // Room less one gap is 640 x 440 x 310; a side with its gap is 310, 210 or 160.
  it("stand upright: one layer, two by two; turned it would be three by one", () => {
    expect(countOf(room, module, "upright", 10)).toBe(1 * Math.max(2 * 2, 3 * 1));
  });

  it("lie on the side: one layer, two by two or four by one", () => {
    expect(countOf(room, module, "on the side", 10)).toBe(4);
  });

  it("stand on end: one layer that just goes in, three by two or, turned, four by two", () => {
    expect(countOf(room, module, "on end", 10)).toBe(8);
    expect(countOf({ ...room, height_mm: 319.9 }, module, "on end", 10)).toBe(0);
  });

  it("are counted with no room kept free, and where nothing goes in", () => {
    // 650 / 300 x 450 / 200 x 320 / 150.
    expect(countOf(room, module, "upright", 0)).toBe(2 * 2 * 2);
    expect(countOf({ length_mm: 250, width_mm: 250, height_mm: 140 }, module, "upright", 10)).toBe(0);
    expect(countOf({ length_mm: 5, width_mm: 5, height_mm: 5 }, module, "on end", 10)).toBe(0);
  });

  it("are not left out for the rounding of inches", () => {
    // Three modules of 4.1 inches side by side in 12.3 inches, no gap.
    const inch = 25.4;
    const small = { length_mm: 4.1 * inch, width_mm: 4.1 * inch, height_mm: 4.1 * inch };
    const tight = { length_mm: 12.3 * inch, width_mm: 12.3 * inch, height_mm: 12.3 * inch };
    expect(countOf(tight, small, "upright", 0)).toBe(27);
  });
});

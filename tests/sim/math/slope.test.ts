import { describe, expect, it } from "vitest";
import { gradeOf_ratio, sineOf } from "../../../sim/math/slope.ts";

describe("a slope", () => {
  it("of 3 in 4 has the sine 3/5: the right-angled triangle of 3, 4, 5 (Euclid, I.47)", () => {
    expect(sineOf(3 / 4)).toBeCloseTo(3 / 5, 15);
    expect(gradeOf_ratio(3 / 5)).toBeCloseTo(3 / 4, 15);
  });

  it("keeps its sign, and comes back the same", () => {
    for (const grade of [-1, -0.2, 0, 0.001, 1 / 6, 2]) expect(gradeOf_ratio(sineOf(grade))).toBeCloseTo(grade, 12);
  });
});

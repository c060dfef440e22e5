import { describe, expect, it } from "vitest";
import { tyreMarking } from "../../../../shared/quantity/reading/tyreMarking.ts";
import { readQuantity } from "../../../../shared/quantity.ts";

describe("a tyre's marking", () => {
  // By hand from the rule: rim + 2 · aspect · width, an inch being 25.4 mm.
  it.each<[string, number, number]>([
    ["5.20-13", 330.2 + 2 * 0.95 * 5.2 * 25.4, 132.08],
    ["5,20-13", 330.2 + 2 * 0.95 * 5.2 * 25.4, 132.08],
    ["6.40 x 13", 330.2 + 2 * 0.95 * 6.4 * 25.4, 162.56],
    ["6.00-16", 406.4 + 2 * 6 * 25.4, 152.4],
    ["7.50 R 16 C", 406.4 + 2 * 7.5 * 25.4, 190.5],
    ["5.50-12", 304.8 + 2 * 0.88 * 5.5 * 25.4, 139.7],
    ["6.95-14", 355.6 + 2 * 0.82 * 6.95 * 25.4, 176.53],
    ["165 R 15", 381 + 2 * 0.82 * 165, 165],
    ["165 SR 15", 381 + 2 * 0.82 * 165, 165],
    ["165-15", 381 + 2 * 0.82 * 165, 165],
    ["165 R 400", 400 + 2 * 0.82 * 165, 165],
    ["175/70 R13", 330.2 + 2 * 0.7 * 175, 175],
    ["175/70R13 82T", 330.2 + 2 * 0.7 * 175, 175],
    ["175/70-13", 330.2 + 2 * 0.7 * 175, 175],
    ["185/65 HR 14", 355.6 + 2 * 0.65 * 185, 185],
    ["P205/75R15", 381 + 2 * 0.75 * 205, 205],
    ["31x10.50 R15", 31 * 25.4, 266.7],
  ])("%s stands %f mm tall unladen", (text, free_mm, width_mm) => {
    const marking = tyreMarking(text);
    expect(marking?.freeDiameter_mm).toBeCloseTo(free_mm, 9);
    expect(marking?.sectionWidth_mm).toBeCloseTo(width_mm, 9);
    expect(marking?.loadedRadius_mm).toBeCloseTo((0.97 * free_mm) / 2, 9);
  });

  it.each(["520-13", "175/7 R13", "165", "1480 kg", "9/41", "14 1/4", "5.20-40", "999 R 15"])("%s is none", (text) => {
    expect(tyreMarking(text)).toBeUndefined();
  });

  it("gives a rolling circumference in the range of small cars and of vans", () => {
    // common practice, no source: 1.70-1.95 m small cars, 2.1-2.4 m four-wheel drives and vans
    const round_m = (text: string) => ((tyreMarking(text)?.loadedRadius_mm ?? 0) * 2 * Math.PI) / 1000;
    for (const small of ["5.20-13", "145 R 13", "155 R 13", "5.60-13"]) {
      expect(round_m(small)).toBeGreaterThan(1.7);
      expect(round_m(small)).toBeLessThan(1.95);
    }
    for (const large of ["6.00-16", "7.50-16", "205/80 R16"]) {
      expect(round_m(large)).toBeGreaterThan(2.1);
      expect(round_m(large)).toBeLessThan(2.4);
    }
  });

  it("says that it is a rule of thumb and how far it may be out", () => {
    const assumed = readQuantity("wheelRadius", "5.20-13");
    const marked = readQuantity("wheelRadius", "175/70 R13");
    if (!assumed.ok || assumed.unknown || !marked.ok || marked.unknown) throw new Error("not read");
    expect(assumed.notes.join()).toContain("common practice, no source");
    expect(assumed.plusMinus).toBeCloseTo(0.03 * assumed.value, 9);
    expect(marked.plusMinus).toBeCloseTo(0.01 * marked.value, 9);
    expect(assumed.understood).toBe("5.20-13 = loaded radius 282 mm, 1.77 m a turn");
  });

  it("is a circumference where the field wants one", () => {
    const reading = readQuantity("circumference", "175/70 R13");
    expect(reading).toMatchObject({ ok: true, understood: "175/70 R13 = 1.75 m a turn" });
  });
});

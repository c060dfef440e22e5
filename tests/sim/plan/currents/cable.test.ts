import { describe, expect, it } from "vitest";
import { type CableTask, cableFor } from "../../../../sim/plan/currents/cable.ts";
import { copper_ohmpm, STRANDED_ratio } from "../../../../sim/plan/currents/copper.ts";

const task = (changes: Partial<CableTask> = {}): CableTask => ({
  carries_A: 160,
  steady_A: 100,
  peak_A: 300,
  length_m: 6,
  conductor_degC: 20,
  ...changes,
});

describe("the cable for a current", () => {
  it("is the smallest that carries it", () => {
    const size = (carries_A: number) => cableFor(task({ carries_A })).section_mm2;
    expect([size(100), size(101), size(160), size(161), size(300)]).toEqual([16, 25, 35, 50, 95]);
  });
  it("is two or more of one size where none carries it alone", () => {
    const found = (carries_A: number) => {
      const { parallel, section_mm2 } = cableFor(task({ carries_A }));
      return { parallel, section_mm2 };
    };
    expect(found(300)).toEqual({ parallel: 1, section_mm2: 95 });
    expect(found(301)).toEqual({ parallel: 2, section_mm2: 35 });
    expect(found(600)).toEqual({ parallel: 2, section_mm2: 95 });
    expect(found(601)).toEqual({ parallel: 3, section_mm2: 70 });
  });
  it("loses volts and watts by Ohm and Joule, those side by side together", () => {
    const one = cableFor(task());
    const metre_ohm = STRANDED_ratio * copper_ohmpm(35, 20);
    expect(one.resistance_ohmpm).toBeCloseTo(metre_ohm, 12);
    expect(one.drop_V).toBeCloseTo(100 * 6 * metre_ohm, 9);
    expect(one.peakDrop_V).toBeCloseTo(300 * 6 * metre_ohm, 9);
    expect(one.heat_Wpm).toBeCloseTo(100 * 100 * metre_ohm, 9);
    expect(cableFor(task({ carries_A: 600 })).resistance_ohmpm).toBeCloseTo(
      (STRANDED_ratio * copper_ohmpm(95, 20)) / 2,
      12,
    );
  });
});

describe("a cable as fitted", () => {
  const fitted = (fitted_mm2: number) => cableFor(task({ carries_A: 1000, fitted_mm2 }));
  it("is one, whatever is asked of it, and of a listed section carries what is listed", () => {
    for (const [section_mm2, carries_A] of [
      [16, 100],
      [25, 130],
      [50, 200],
      [95, 300],
    ]) {
      const { carries_A: found, parallel } = fitted(section_mm2);
      expect(found).toBeCloseTo(carries_A, 9);
      expect(parallel).toBe(1);
    }
  });
  it("between two carries by the power of the section that runs through both, and goes on so beyond the ends", () => {
    // From 70 to 95 mm2 250 to 300 A: the power is ln 1.2 / ln (95/70) = 0.597; at the geometric mean it is the geometric mean.
    expect(fitted(Math.sqrt(70 * 95)).carries_A).toBeCloseTo(Math.sqrt(250 * 300), 6);
    expect(fitted(95 * (95 / 70)).carries_A).toBeCloseTo(360, 6);
    // From 16 to 25 mm2 100 to 130 A: one step below 16 it is 100/1.3.
    expect(fitted(16 * (16 / 25)).carries_A).toBeCloseTo(100 / 1.3, 6);
  });
  it("has lugs for M8 up to 50 mm2, for M10 above", () => {
    expect([fitted(50).stud, fitted(51).stud]).toEqual(["M8", "M10"]);
  });
});

import { describe, expect, it } from "vitest";
import { coastTime_s, coastTimeSlope } from "../../../../sim/vehicle/coastDown/coastTime.ts";

const MASS_kg = 1400;

/** Held to 1e-12 of the closed form. */
function expectTime(found_s: number, exact_s: number): void {
  expect(Math.abs(found_s / exact_s - 1)).toBeLessThan(1e-12);
}

describe("the time to slow down", () => {
  it("under a steady force is the change of momentum over the force", () => {
    expectTime(coastTime_s({ f0_N: 200, f1_Npmps: 0, f2_Npmps2: 0 }, MASS_kg, 20, 15), (MASS_kg * 5) / 200);
    expectTime(coastTime_s({ f0_N: 0.5, f1_Npmps: 0, f2_Npmps2: 0 }, MASS_kg, 20, 15), (MASS_kg * 5) / 0.5);
  });

  it("under a force that goes with speed is a logarithm", () => {
    expectTime(coastTime_s({ f0_N: 0, f1_Npmps: 12, f2_Npmps2: 0 }, MASS_kg, 30, 20), (MASS_kg / 12) * Math.log(1.5));
  });

  it("under a force that goes with the square of speed is a difference of reciprocals", () => {
    const exact_s = (MASS_kg / 0.5) * (1 / 20 - 1 / 30);
    expectTime(coastTime_s({ f0_N: 0, f1_Npmps: 0, f2_Npmps2: 0.5 }, MASS_kg, 30, 20), exact_s);
  });

  it("under all three, with real roots, is a logarithm of the factors", () => {
    // 0.5 (v + 10)(v + 40) = 200 + 25 v + 0.5 v²
    const exact_s = (MASS_kg / (0.5 * 30)) * (Math.log(40 / 70) - Math.log(30 / 60));
    expectTime(coastTime_s({ f0_N: 200, f1_Npmps: 25, f2_Npmps2: 0.5 }, MASS_kg, 30, 20), exact_s);
  });

  it("is no number where the force ends within the band or pushes", () => {
    expect(coastTime_s({ f0_N: -100, f1_Npmps: 0, f2_Npmps2: 0.5 }, MASS_kg, 30, 5)).toBeNaN();
    expect(coastTime_s({ f0_N: 0, f1_Npmps: 0, f2_Npmps2: 0 }, MASS_kg, 30, 20)).toBeNaN();
  });
});

describe("the change of that time with a term of the force", () => {
  const steady = { f0_N: 200, f1_Npmps: 0, f2_Npmps2: 0 };

  it("is -m ∫ v^power dv over the squared force where that is steady", () => {
    expectTime(coastTimeSlope(steady, MASS_kg, 20, 15, 0), (-MASS_kg * 5) / 200 ** 2);
    expectTime(coastTimeSlope(steady, MASS_kg, 20, 15, 1), (-MASS_kg * (20 ** 2 - 15 ** 2)) / 2 / 200 ** 2);
    expectTime(coastTimeSlope(steady, MASS_kg, 20, 15, 2), (-MASS_kg * (20 ** 3 - 15 ** 3)) / 3 / 200 ** 2);
  });

  it("is what the time changes by, under a force of all three terms", () => {
    const at = [150, 3, 0.5];
    const time_s = (terms: number[]) =>
      coastTime_s({ f0_N: terms[0], f1_Npmps: terms[1], f2_Npmps2: terms[2] }, MASS_kg, 30, 20);
    for (const k of [0, 1, 2]) {
      // Central differences of a hundred-thousandth: their own error is its square.
      const part = 1e-5;
      const shifted = (by: number) => time_s(at.map((value, j) => (j === k ? value * (1 + by) : value)));
      const quotient = (shifted(part) - shifted(-part)) / (2 * part * at[k]);
      const slope = coastTimeSlope({ f0_N: 150, f1_Npmps: 3, f2_Npmps2: 0.5 }, MASS_kg, 30, 20, k);
      expect(slope / quotient).toBeCloseTo(1, 7);
    }
  });
});

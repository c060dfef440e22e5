import { probit } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { drawShares } from "../../../../sim/plan/vary/drawShares.ts";
import { influenceOf, spreadOf } from "../../../../sim/plan/vary/spread.ts";

const VARIANTS = 4000;

// y = Σ a x of independent normal x is normal: its mean, its percentiles and its rank correlations are known in closed form.
// Spearman's of two normals that correlate by r is 6/π asin(r/2): K. Pearson, 1907, from memory.
describe("the draw of a linear model of normal inputs", () => {
  const weights = [3, -2, 1, 0.5];
  const shares = drawShares(weights.length, VARIANTS, 7);
  // Shares as values of a standard normal; simple-statistics' own inverse is exact to 1e-3 or so, kept off its ends.
  const inputs = shares.map((each) => Array.from(each, (share) => probit(Math.min(1 - 1e-5, Math.max(1e-5, share)))));
  const result = Array.from(
    { length: VARIANTS },
    (_, i) => 10 + weights.reduce((sum, a, k) => sum + a * inputs[k][i], 0),
  );
  const sigma = Math.hypot(...weights);

  it("has its mean and its percentiles", () => {
    const { mean, p5, p25, p50, p75, p95 } = spreadOf(result);
    // A Latin hypercube leaves hardly any error of the mean; percentiles vary by √(p(1-p)/n)/φ at most: 0.033 σ at 5 %.
    expect(mean).toBeCloseTo(10, 2);
    for (const [found, z] of [
      [p5, -1.6449],
      [p25, -0.6745],
      [p50, 0],
      [p75, 0.6745],
      [p95, 1.6449],
    ]) {
      expect(Math.abs(found - (10 + z * sigma))).toBeLessThan(2 * 0.033 * sigma);
    }
  });

  it("has its rank correlations, and what knowing an input would leave", () => {
    weights.forEach((a, k) => {
      const r = a / sigma;
      const { rank_coeff, left_frac } = influenceOf(inputs[k], result);
      // The standard error of a rank correlation is at most 1/√(n-1) = 0.016.
      expect(Math.abs(rank_coeff - (6 / Math.PI) * Math.asin(r / 2))).toBeLessThan(2 * 0.016);
      expect(Math.abs(left_frac - Math.sqrt(1 - r * r))).toBeLessThan(0.05);
    });
  });
});

describe("shares", () => {
  it("fall one into each equal piece, for each input in another order", () => {
    const [first, second] = drawShares(2, 50, 3);
    for (const each of [first, second]) {
      expect([...each].map((share) => Math.floor(share * 50)).sort((a, b) => a - b)).toEqual([...Array(50).keys()]);
    }
    expect([...first]).not.toEqual([...second]);
    expect(Math.abs(influenceOf([...first], [...second]).rank_coeff)).toBeLessThan(0.4);
  });
  it("are the same for the same seed and others for another", () => {
    expect(drawShares(3, 20, 5)).toEqual(drawShares(3, 20, 5));
    expect(drawShares(3, 20, 5)).not.toEqual(drawShares(3, 20, 6));
    expect(drawShares(0, 20, 5)).toEqual([]);
  });
});

describe("percentiles and influence", () => {
  it("lie on straight lines between neighbours", () => {
    // Eleven values from 0 to 10: each tenth is one of them.
    expect(spreadOf([10, 0, 5, 1, 9, 2, 8, 3, 7, 4, 6])).toEqual({
      mean: 5,
      p5: 0.5,
      p25: 2.5,
      p50: 5,
      p75: 7.5,
      p95: 9.5,
    });
    expect(spreadOf([4])).toEqual({ mean: 4, p5: 4, p25: 4, p50: 4, p75: 4, p95: 4 });
  });
  it("are those of ranks, so that any rising law counts as full", () => {
    const input = [1, 2, 3, 4, 5];
    expect(
      influenceOf(
        input,
        input.map((x) => x ** 5),
      ).rank_coeff,
    ).toBeCloseTo(1, 12);
    expect(
      influenceOf(
        input,
        input.map((x) => -x),
      ).rank_coeff,
    ).toBeCloseTo(-1, 12);
  });
  it("are none of an input or a result that does not change", () => {
    expect(influenceOf([2, 2, 2], [1, 2, 3])).toEqual({ rank_coeff: 0, left_frac: 1 });
    expect(influenceOf([1, 2, 3], [5, 5, 5])).toEqual({ rank_coeff: 0, left_frac: 1 });
  });
});

import { quantileSorted } from "d3-array";
import { sampleRankCorrelation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { SOBOL_DIMENSIONS } from "../../../../sim/math/sobol.ts";
import { drawShares } from "../../../../sim/plan/vary/drawShares.ts";

it("draws one share from each of as many equal pieces as there are variants, for every input [McKayBeckmanConover1979]", () => {
  const all = drawShares(5, 40, 7);
  expect(all.map(({ length }) => length)).toEqual([40, 40, 40, 40, 40]);
  for (const shares of all) {
    const pieces = Array.from(shares, (share) => Math.floor(share * 40)).sort((a, b) => a - b);
    expect(pieces).toEqual(Array.from({ length: 40 }, (_, i) => i));
  }
});

it("takes the pieces in an order of its own for each input, the first and the last moved too, and not at their ends", () => {
  const orders = drawShares(6, 12, 3).map((shares) => Array.from(shares, (share) => Math.floor(share * 12)));
  expect(new Set(orders.map((order) => order.join())).size).toBe(6);
  for (const place of [0, 11]) expect(new Set(orders.map((order) => order[place])).size).toBeGreaterThan(1);
  const within = drawShares(1, 400, 3)[0].map((share) => (share * 400) % 1);
  // Even over a piece: the mean of 400 is a half to four of its standard deviations, 4 / √(12 · 400).
  expect(Math.abs(within.reduce((sum, share) => sum + share, 0) / 400 - 0.5)).toBeLessThan(4 / Math.sqrt(4800));
});

it("draws the same for the same seed, and otherwise for another", () => {
  expect(drawShares(2, 9, 1)).toEqual(drawShares(2, 9, 1));
  expect(drawShares(2, 9, 1)).not.toEqual(drawShares(2, 9, 2));
});

it("draws inputs beyond the dimensions of the even sequence too, each over all pieces", () => {
  const all = drawShares(SOBOL_DIMENSIONS + 2, 16, 5).map((shares) =>
    Array.from(shares, (share) => Math.floor(share * 16)),
  );
  for (const pieces of all) expect(pieces.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 16 }, (_, i) => i));
  expect(new Set(all.map((pieces) => pieces.join())).size).toBe(SOBOL_DIMENSIONS + 2);
});

describe("256 variants of a sum of six inputs drawn alike, over 100 seeds", () => {
  const [COUNT, INPUTS, SEEDS] = [256, 6, 100];
  // Distribution and density of a sum of six: 1 / 6! Σ (-1)^k C(6, k) (x - k)^6, and its derivative (Irwin 1927, Hall 1927; common, no source).
  const terms = (x: number, power: number) =>
    [1, -6, 15, -20, 15, -6, 1].reduce((sum, each, k) => sum + (x > k ? each * (x - k) ** power : 0), 0);
  const below = (x: number) => terms(x, 6) / 720;
  const density = (x: number) => terms(x, 5) / 120;
  /** Where a twentieth lies below, by halving. */
  const low = (() => {
    let [from, to] = [0, 3];
    for (let k = 0; k < 60; k++)
      [from, to] = below((from + to) / 2) < 0.05 ? [(from + to) / 2, to] : [from, (from + to) / 2];
    return from;
  })();
  const runs = Array.from({ length: SEEDS }, (_, seed) => {
    const shares = drawShares(INPUTS, COUNT, seed + 1);
    const sums = Array.from({ length: COUNT }, (_, i) => shares.reduce((sum, each) => sum + each[i], 0));
    return { shares, sums, sorted: sums.toSorted((a, b) => a - b) };
  });
  const rms = (errors: readonly number[]) =>
    Math.sqrt(errors.reduce((sum, each) => sum + each * each, 0) / errors.length);

  it("err in their mean by less than a quarter of what independent draws err by", () => {
    // Of those: the standard deviation of a sum, √(6 / 12), over √256.
    const errors = runs.map(({ sums }) => sums.reduce((sum, each) => sum + each, 0) / COUNT - INPUTS / 2);
    expect(rms(errors)).toBeLessThan(Math.sqrt(INPUTS / 12 / COUNT) / 4);
  });

  it("err in the rank correlation of an input by no more than nine times as many independent draws", () => {
    // Of a normal pair the coefficient is 6/π asin(r / 2), r = 1/√6; a sum of six is that to 0.005. Independent draws err by (1 - r²) / √n or more.
    const r = 1 / Math.sqrt(INPUTS);
    const truth = (6 / Math.PI) * Math.asin(r / 2);
    const errors = runs.map(({ shares, sums }) => sampleRankCorrelation(Array.from(shares[0]), sums) - truth);
    expect(rms(errors)).toBeLessThan((1 - r * r) / Math.sqrt(9 * COUNT));
  });

  it("err at the ends of nine tenths by no more than two and a quarter times as many independent draws", () => {
    // Of those: √(p (1 - p) / n) over the density there.
    const plain = Math.sqrt((0.05 * 0.95) / COUNT) / density(low);
    const errors = runs.flatMap(({ sorted }) => [
      (quantileSorted(sorted, 0.05) ?? Number.NaN) - low,
      (quantileSorted(sorted, 0.95) ?? Number.NaN) - (INPUTS - low),
    ]);
    expect(rms(errors)).toBeLessThan(plain / Math.sqrt(2.25));
  });
});

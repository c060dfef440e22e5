import { expect, it } from "vitest";
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

import { expect, it } from "vitest";
import { overlappingChunks } from "../../../../sim/math/kalman/overlappingChunks.ts";

it("leaves a short log whole", () => {
  expect(overlappingChunks(10, 5)).toEqual([{ from: 0, to: 10, first: 0, last: 10 }]);
  expect(overlappingChunks(0, 5)).toEqual([]);
});

it("cuts a long one after each 16,384 moments, every piece with its overlap as far as there is one", () => {
  expect(overlappingChunks(2 * 16_384 + 10, 100)).toEqual([
    { from: 0, to: 16_384, first: 0, last: 16_484 },
    { from: 16_384, to: 32_768, first: 16_284, last: 32_778 },
    { from: 32_768, to: 32_778, first: 32_668, last: 32_778 },
  ]);
});

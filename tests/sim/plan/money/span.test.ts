import { expect, it } from "vitest";
import { between, exactly, less, NOTHING, product, spanOf, sum, times } from "../../../../sim/plan/money/span.ts";

const ten = { value: 10, low: 8, high: 13 };
const two = { value: 2, low: 1, high: 4 };

it("is typed as one figure or from one end to the other, the middle its value", () => {
  expect(exactly(3)).toEqual({ value: 3, low: 3, high: 3 });
  expect(between(4, 10)).toEqual({ value: 7, low: 4, high: 10 });
  expect(between(4)).toEqual({ value: 4, low: 4, high: 4 });
  expect(spanOf({ low: 4, high: 10 })).toEqual({ value: 7, low: 4, high: 10 });
});

it("is added end by end, and taken away with its ends crossed", () => {
  expect(sum(ten, two, ten)).toEqual({ value: 22, low: 17, high: 30 });
  expect(sum()).toEqual(NOTHING);
  expect(NOTHING).toEqual({ value: 0, low: 0, high: 0 });
  expect(less(ten, two)).toEqual({ value: 8, low: 4, high: 12 });
});

it("is multiplied end by end", () => {
  expect(product(ten, two)).toEqual({ value: 20, low: 8, high: 52 });
  expect(times(ten, 3)).toEqual({ value: 30, low: 24, high: 39 });
});

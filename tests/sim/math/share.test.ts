import { expect, it } from "vitest";
import { share } from "../../../sim/math/share.ts";

it("goes linearly from none to full and stays there", () => {
  expect([0, 10, 15, 20, 30].map((x) => share(x, 10, 20))).toEqual([0, 0, 0.5, 1, 1]);
});

it("jumps where none and full are one, none at the place itself", () => {
  expect([9, 10, 10.001].map((x) => share(x, 10, 10))).toEqual([0, 0, 1]);
});

it("is full everywhere above no limit at all, and none below one that is never met", () => {
  expect(share(250, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY)).toBe(1);
  expect(share(250, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(0);
});

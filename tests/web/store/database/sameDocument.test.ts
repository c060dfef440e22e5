import { expect, it } from "vitest";
import { sameDocument } from "../../../../web/store/database/sameDocument.ts";

it("is the same whatever the order of keys", () => {
  expect(sameDocument({ a: 1, b: [1, { c: "x" }] }, { b: [1, { c: "x" }], a: 1 })).toBe(true);
  expect(sameDocument(Float64Array.of(1, Number.NaN), Float64Array.of(1, Number.NaN))).toBe(true);
});

it.each<[unknown, unknown]>([
  [{ a: 1 }, { a: 1, b: 2 }],
  [{ a: undefined }, { b: undefined }],
  [[1, 2], [1]],
  [[1], { 0: 1 }],
  [Float64Array.of(1), [1]],
  [Float64Array.of(1), Float64Array.of(2)],
  [0, -0],
  [null, {}],
])("%j is another than %j", (a, b) => {
  expect(sameDocument(a, b)).toBe(false);
});

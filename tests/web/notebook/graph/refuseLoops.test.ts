import { expect, it } from "vitest";
import { refuseLoops } from "../../../../web/notebook/graph/refuseLoops.ts";

const refuse = (inputs: Readonly<Record<string, readonly string[]>>) => () =>
  refuseLoops(new Map(Object.entries(inputs)));

it("takes values that hang on others and on none twice over", () => {
  expect(refuse({ a: ["b", "c"], b: ["c"], c: [] })).not.toThrow();
});

it("names the values of a loop in their order", () => {
  expect(refuse({ a: ["b"], b: ["c"], c: ["b"] })).toThrow("found a loop: b, which needs c, which needs b");
  expect(refuse({ a: ["a"] })).toThrow("found a loop: a, which needs a");
});

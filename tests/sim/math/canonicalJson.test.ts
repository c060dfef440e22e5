import { expect, it } from "vitest";
import { canonicalJson } from "../../../sim/math/canonicalJson.ts";

it("writes the same document the same, in whatever order its keys were put", () => {
  expect(canonicalJson({ b: 1, a: { d: undefined, c: "x" } })).toBe('{"a":{"c":"x"},"b":1}');
  expect(canonicalJson({ a: { c: "x" }, b: 1 })).toBe('{"a":{"c":"x"},"b":1}');
});

// The sample of [RFC8785, 3.2.2 and 3.2.3], from memory.
it("writes numbers and literals as the sample has them", () => {
  const sample =
    '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"literals":[null,true,false]}';
  expect(canonicalJson(JSON.parse(sample))).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]}',
  );
});

it("sorts keys by their UTF-16 units", () => {
  const keys = ["\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6"];
  const written = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
  const sorted = ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"];
  expect(written).toBe(`{${sorted.map((key) => `${JSON.stringify(key)}:0`).join(",")}}`);
});

it("writes null for what is missing in a list, where it would shift the rest", () => {
  expect(canonicalJson([1, undefined, 2])).toBe("[1,null,2]");
});

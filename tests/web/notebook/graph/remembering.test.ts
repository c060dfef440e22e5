import { expect, it } from "vitest";
import { lastOf, remembering, sameWhile } from "../../../../web/notebook/graph/remembering.ts";

it("gives the very object of the last time where nothing in it changed", () => {
  const work = remembering(({ a, b }: { a: number; b: number }) => ({ part: { a }, b }));
  const first = work({ a: 1, b: 2 });
  expect(work({ a: 1, b: 2 })).toBe(first);
  const second = work({ a: 1, b: 3 });
  expect(second).not.toBe(first);
  expect(second.part).toBe(first.part);
});

it("works once for the same object", () => {
  let runs = 0;
  const work = lastOf((input: { a: number }) => input.a + ++runs);
  const input = { a: 1 };
  expect([work(input), work(input), work({ a: 1 })]).toEqual([2, 2, 3]);
});

it("keeps an object while the parts named are the same", () => {
  const same = sameWhile<{ a: object; b: number }>(["a"]);
  const a = {};
  const first = same({ a, b: 1 });
  expect(same({ a, b: 2 })).toBe(first);
  expect(same({ a: {}, b: 2 }).b).toBe(2);
});

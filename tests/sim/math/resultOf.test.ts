import { expect, it } from "vitest";
import { resultOf } from "../../../sim/math/resultOf.ts";

it("runs work in steps to its end", () => {
  const done: number[] = [];
  function* steps() {
    for (const share of [0.5, 1]) {
      done.push(share);
      yield share;
    }
    return "all";
  }
  expect(resultOf(steps())).toBe("all");
  expect(done).toEqual([0.5, 1]);
});

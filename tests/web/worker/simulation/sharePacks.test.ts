import { expect, it } from "vitest";
import type { Pack } from "../../../../shared/job/schema/battery.ts";
import { inOrder, sharePacks } from "../../../../web/worker/simulation/sharePacks.ts";

const pack = (seriesModules: number, parallelModules = 1) => ({ seriesModules, parallelModules }) as Pack;

it("gives each part about the same number of modules", () => {
  // 25 and 21 begin; 17 goes to the 21, 13 to the 25 and 8 to the 38 of these two (it is the first of the equal ones).
  expect(
    sharePacks(
      [8, 13, 17, 21, 25].map((modules) => pack(modules)),
      2,
    ),
  ).toEqual([
    [4, 1, 0],
    [3, 2],
  ]);
  expect(sharePacks([pack(10), pack(6, 2), pack(11)], 2)).toEqual([[1], [2, 0]]);
});

it("leaves no part without a pack", () => {
  expect(sharePacks([pack(10)], 2)).toEqual([[0]]);
  expect(sharePacks([pack(10), pack(20)], 1)).toEqual([[1, 0]]);
});

it("puts what was found back into the order of the job", () => {
  expect(
    inOrder(
      [
        [4, 1, 0],
        [3, 2],
      ],
      [
        ["e", "b", "a"],
        ["d", "c"],
      ],
    ),
  ).toEqual(["a", "b", "c", "d", "e"]);
});

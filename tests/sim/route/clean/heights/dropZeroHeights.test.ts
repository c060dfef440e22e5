import { expect, it } from "vitest";
import { dropZeroHeights } from "../../../../../sim/route/clean/heights/dropZeroHeights.ts";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { everySecond } from "../rowsByHand.ts";

/** Heights left of such a list, and what was said. */
function dropped(...heights_m: readonly number[]) {
  const repairs = new RepairList();
  const rows = everySecond(heights_m.length, (i) => ({ elevation_m: heights_m[i] }));
  dropZeroHeights(rows, repairs);
  return { left: [...rows.elevation_m], detail: repairs.finish()[0]?.detail };
}

it("takes 0 m far from all other heights as not recorded", () => {
  expect(dropped(120, 0, 0, 121)).toEqual({
    left: [120, Number.NaN, Number.NaN, 121],
    detail: "2 heights of exactly 0 m, far from all others, taken as not recorded",
  });
});

it("leaves a road by the sea, and a log of nothing else", () => {
  expect(dropped(12, 0, 3).left).toEqual([12, 0, 3]);
  expect(dropped(0, 0).left).toEqual([0, 0]);
});

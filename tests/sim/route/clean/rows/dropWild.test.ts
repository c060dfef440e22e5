import { describe, expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { dropUnreachable, dropZeroFixes } from "../../../../../sim/route/clean/rows/dropWild.ts";
import { positioned, type RowColumns } from "../../../../../sim/route/clean/rows/rowColumns.ts";
import { everySecond } from "../rowsByHand.ts";

/** Rows left with a position, and what was said. */
function dropped(rows: RowColumns) {
  const repairs = new RepairList();
  dropZeroFixes(rows, repairs);
  dropUnreachable(rows, repairs, 0);
  return { left: [...positioned(rows)], repairs: repairs.finish() };
}
/** Twenty seconds at 10 m/s, those of the list so many metres further. */
const withJump = (at: readonly number[], by_m: number) =>
  everySecond(20, (i) => ({ north_m: 10 * i + (at.includes(i) ? by_m : 0) }));

it("drops positions at 0,0 and leaves the others", () => {
  const rows = withJump([], 0);
  rows.latitude_deg.fill(0, 3, 5);
  rows.longitude_deg.fill(0, 3, 5);
  const { left, repairs } = dropped(rows);
  expect(left).toHaveLength(18);
  expect(repairs).toMatchObject([
    { kind: "zeroFix", count: 2, detail: "2 positions at 0,0 dropped", from_s: 3, to_s: 4 },
  ]);
});

describe("a position out of reach", () => {
  it("is dropped, by itself or with its neighbours, and one at the start does not condemn the rest", () => {
    expect(dropped(withJump([7], 500)).left).not.toContain(7);
    expect(dropped(withJump([7, 8, 9], 2000)).left).toHaveLength(17);
    expect(dropped(withJump([0], 500)).left).toHaveLength(19);
  });
  it("is none within 50 m of what 250 km/h reach in the time", () => {
    // 50 m and 69.4 m in a second, of which 10 are driven.
    expect(dropped(withJump([7], 105)).left).toHaveLength(20);
    expect(dropped(withJump([7], 115)).left).toHaveLength(19);
  });
  it("stays where eight others agree with it: the log goes on somewhere else", () => {
    const elsewhere = Array.from({ length: 10 }, (_, i) => 10 + i);
    expect(dropped(withJump(elsewhere, 5000)).left).toHaveLength(20);
  });
});

import { describe, expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { orderInTime } from "../../../../../sim/route/clean/rows/orderInTime.ts";
import { madeLog } from "../../../../logs/madeFixes.ts";

/** Order and repairs of rows at such times, with positions where not said otherwise. */
function ordered(times_s: readonly number[], { hasZone = true, placed = times_s.map(() => true) } = {}) {
  const repairs = new RepairList();
  const log = madeLog(
    times_s.map((time_s, i) => ({ time_s, ...(placed[i] && { north_m: i }) })),
    hasZone,
  );
  const { rows, time_s } = orderInTime(log, repairs, 0);
  return { rows: [...rows], time_s: [...time_s], kinds: repairs.finish().map(({ kind }) => kind) };
}

it("sorts what is out of order and says so", () => {
  expect(ordered([0, 2, 1, 3])).toEqual({ rows: [0, 2, 1, 3], time_s: [0, 1, 2, 3], kinds: ["backwardTime"] });
});

it("keeps one row of a moment, the first that has a position", () => {
  const found = ordered([0, 1, 1.002, 2], { placed: [true, false, true, true] });
  expect(found.rows).toEqual([0, 2, 3]);
  expect(found.kinds).toEqual(["duplicate"]);
});

it("drops a single time that lies days off its neighbours", () => {
  expect(ordered([1000, 1001, 1e6, 1002, 1003])).toMatchObject({ rows: [0, 1, 3, 4], kinds: ["backwardTime"] });
});

it.each([
  [
    [1e6, 1000, 1001, 1002],
    [1, 2, 3],
  ],
  [
    [1000, 1e6, 1001, 1002],
    [0, 2, 3],
  ],
  [
    [1000, 1001, 1e6, 1002],
    [0, 1, 3],
  ],
  [
    [1000, 1001, 1002, 1e6],
    [0, 1, 2],
  ],
])("keeps the good row at an end beside a wild time: %j", (times_s, rows) => {
  expect(ordered(times_s).rows).toEqual(rows);
});

it("keeps all rows where each is days off the next: a log of single fixes", () => {
  expect(ordered([0, 1e6, 2e6]).rows).toEqual([0, 1, 2]);
});

describe("a change of the clocks", () => {
  const NIGHT_s = 7200;
  it("put back by an hour is undone where times have no zone", () => {
    const times_s = [NIGHT_s, NIGHT_s + 1, NIGHT_s + 2 - 3600, NIGHT_s + 3 - 3600];
    const found = ordered(times_s, { hasZone: false });
    expect(found.time_s.map((time_s) => time_s - NIGHT_s)).toEqual([0, 1, 2, 3]);
    expect(found.kinds).toEqual(["clockChange"]);
    expect(ordered(times_s).kinds).toEqual(["backwardTime"]);
  });
  it("put on by an hour is undone at night, and a pause by day is a pause", () => {
    const times_s = [NIGHT_s - 1, NIGHT_s + 3600, NIGHT_s + 3601];
    expect(ordered(times_s, { hasZone: false }).time_s.map((time_s) => time_s - NIGHT_s)).toEqual([-1, 0, 1]);
    const noon = times_s.map((time_s) => time_s + 36_000);
    expect(ordered(noon, { hasZone: false }).time_s).toEqual(noon);
  });
});

it("refuses a log of fewer than two moments", () => {
  expect(() => ordered([Number.NaN, 1])).toThrow("found 1 fix with a time, wanted at least 2");
  expect(() => ordered([1, 1])).toThrow("found all fixes at one moment");
});

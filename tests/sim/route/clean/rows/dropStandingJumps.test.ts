import { describe, expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { dropStandingJumps } from "../../../../../sim/route/clean/rows/dropStandingJumps.ts";
import { everySecond } from "../rowsByHand.ts";

/** Rows every so many seconds at these places to the east, and which of them lost their position. */
function dropped(east_m: readonly number[], every_s = 10, off: readonly "multipath"[] = []) {
  const rows = everySecond(east_m.length, (i) => ({ east_m: east_m[i], north_m: i % 2 }));
  rows.time_s.forEach((_, i) => {
    rows.time_s[i] = i * every_s;
  });
  const repairs = new RepairList(off);
  dropStandingJumps(rows, repairs, 0);
  const lost = [...rows.latitude_deg.keys()].filter((i) => Number.isNaN(rows.latitude_deg[i]));
  return { lost, detail: repairs.finish()[0]?.detail };
}

describe("fixes apart from where the car stands", () => {
  it("are dropped, and it is said how far off they were", () => {
    expect(dropped([0, 1, 0, 30, 1, 0])).toEqual({
      lost: [3],
      detail: expect.stringMatching(/^1 fix (29|30) m off while the car stands dropped at /),
    });
    expect(dropped([0, 1, 0, 30, 31, 1, 0]).lost).toEqual([3, 4]);
  });

  it("stay where the car goes on from there, or was on its way", () => {
    expect(dropped([0, 1, 0, 30, 60, 90, 120]).lost).toEqual([]);
    expect(dropped([0, 40, 80, 150, 160, 200]).lost).toEqual([]);
  });

  it("stay where they are no further off than the others scatter, or for longer than a reflection lasts", () => {
    expect(dropped([0, 10, 0, 20, 10, 0]).lost).toEqual([]);
    expect(dropped([0, 1, 30, 30, 30, 30, 1, 0]).lost).toEqual([]);
  });

  it("stay where fixes are near in time, and where it is turned off", () => {
    expect(dropped([0, 1, 0, 30, 1, 0], 1).lost).toEqual([]);
    expect(dropped([0, 1, 0, 30, 1, 0], 10, ["multipath"]).lost).toEqual([]);
  });
});

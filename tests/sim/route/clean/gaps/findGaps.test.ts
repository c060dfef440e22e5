import { describe, expect, it } from "vitest";
import { findGaps } from "../../../../../sim/route/clean/gaps/findGaps.ts";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { rowsOf } from "../rowsByHand.ts";

/** Stretches of so many seconds at 15 m/s with a row each `interval_s`, so many seconds between them on the way on. */
function found(seconds: number, gap_s: number, { interval_s = 1, repairs = new RepairList() } = {}) {
  const times_s = [0, seconds + gap_s].flatMap((from_s) =>
    Array.from({ length: seconds / interval_s + 1 }, (_, i) => from_s + i * interval_s),
  );
  const rows = rowsOf(...times_s.map((time_s) => ({ time_s, north_m: 15 * time_s, speed_mps: 15 })));
  return { ...findGaps(rows, repairs, 0), repairs: repairs.finish() };
}

describe("a gap", () => {
  it("is longer than three usual intervals, and five seconds", () => {
    expect(found(60, 5).segments[0].bridges).toEqual([]);
    expect(found(60, 6).segments[0].bridges).toEqual([{ from: 60, kind: "tunnel" }]);
    expect(found(600, 30, { interval_s: 10 }).segments[0].bridges).toEqual([]);
    expect(found(600, 31, { interval_s: 10 }).segments[0].bridges).toHaveLength(1);
  });
  it("that cannot be bridged cuts the log", () => {
    const { segments, gaps } = found(60, 700);
    expect(segments.map(({ from, to }) => [from, to])).toEqual([
      [0, 61],
      [61, 122],
    ]);
    expect(gaps).toMatchObject([{ row: 61, kind: "signalLoss", from_s: 60, to_s: 760 }]);
  });
  it("is cut out where its bridge is not wanted, and said either way", () => {
    const cut = found(60, 30, { repairs: new RepairList(["tunnel"]) });
    expect(cut.segments).toHaveLength(2);
    expect(cut.repairs).toMatchObject([{ kind: "signalLoss" }]);
    expect(found(60, 30).repairs).toMatchObject([{ kind: "tunnel" }]);
  });
});

it("has the usual interval while the car moves, whatever a sleeping logger does", () => {
  expect(found(60, 30).interval_s).toBe(1);
  expect(found(600, 30, { interval_s: 10 }).interval_s).toBe(10);
});

import { expect, it } from "vitest";
import { dropPosition, keptRows, positioned, rowColumns } from "../../../../../sim/route/clean/rows/rowColumns.ts";
import { madeLog } from "../../../../logs/madeFixes.ts";
import { rowsOf } from "../rowsByHand.ts";

it("has the columns in the order found, with the times found", () => {
  const { fixes } = madeLog([
    { time_s: 9, speed_mps: 1, segment: 1 },
    { time_s: 5, speed_mps: 2, segment: 2 },
    { time_s: 7, speed_mps: 3 },
  ]);
  const rows = rowColumns(fixes, { rows: Uint32Array.of(1, 0), time_s: Float64Array.of(5, 6) });
  expect(rows).toMatchObject({ count: 2 });
  expect([[...rows.time_s], [...rows.speed_mps], [...rows.segment]]).toEqual([
    [5, 6],
    [2, 1],
    [2, 1],
  ]);
});

it("keeps rows that are wanted", () => {
  const rows = rowsOf({ time_s: 0, speed_mps: 1 }, { time_s: 1, speed_mps: 2 }, { time_s: 2, speed_mps: 3 });
  const kept = keptRows(rows, Uint8Array.of(1, 0, 1));
  expect([kept.count, [...kept.speed_mps]]).toEqual([2, [1, 3]]);
});

it("takes a position out and leaves the rest of its row", () => {
  const rows = rowsOf({ time_s: 0, north_m: 0, speed_mps: 5 }, { time_s: 1, north_m: 5, speed_mps: 6 });
  dropPosition(rows, 0);
  expect([...positioned(rows)]).toEqual([1]);
  expect(rows.speed_mps[0]).toBe(5);
});

import { expect, it } from "vitest";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { rowsOf } from "../rowsByHand.ts";

it("has every row and every whole second from the first row on", () => {
  const line = timeline(rowsOf({ time_s: 10 }, { time_s: 11.5 }, { time_s: 12 }, { time_s: 13.2 }), 0, 4);
  expect([...line.time_s]).toEqual([10, 11, 11.5, 12, 13, 13.2]);
  expect([...line.row]).toEqual([0, -1, 1, 2, -1, 3]);
  expect([...line.second]).toEqual([0, 1, -1, 2, 3, -1]);
  expect([line.count, line.seconds]).toEqual([6, 4]);
});

it("merges a row with the second that it all but falls on", () => {
  const line = timeline(rowsOf({ time_s: 0 }, { time_s: 1.0005 }, { time_s: 1.9995 }), 0, 3);
  expect([...line.row]).toEqual([0, 1, 2]);
  expect([...line.second]).toEqual([0, 1, 2]);
});

it("begins at the row that is asked for", () => {
  const line = timeline(rowsOf({ time_s: 0 }, { time_s: 5 }, { time_s: 6 }), 1, 3);
  expect([...line.time_s]).toEqual([5, 6]);
  expect([...line.row]).toEqual([1, 2]);
});

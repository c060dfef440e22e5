import type { RowColumns } from "./rowColumns.ts";

/** Moments of a segment: every row of the log and every whole second of the grid, merged where they coincide. */
export interface Timeline {
  readonly count: number;
  readonly time_s: Float64Array;
  /** Row of the log at this moment, or -1. */
  readonly row: Int32Array;
  /** Second of the grid at this moment, or -1. */
  readonly second: Int32Array;
  readonly seconds: number;
}

const SAME_s = 1e-3;

/** Moments of rows `from` to `to`; the grid starts at the first row and has one moment a second up to the last. */
export function timeline(rows: RowColumns, from: number, to: number): Timeline {
  const start_s = rows.time_s[from];
  const seconds = Math.floor(rows.time_s[to - 1] - start_s + SAME_s) + 1;
  const most = to - from + seconds;
  const time_s = new Float64Array(most);
  const row = new Int32Array(most).fill(-1);
  const second = new Int32Array(most).fill(-1);
  let count = 0;
  let i = from;
  let k = 0;
  while (i < to || k < seconds) {
    const row_s = i < to ? rows.time_s[i] : Number.POSITIVE_INFINITY;
    const grid_s = k < seconds ? start_s + k : Number.POSITIVE_INFINITY;
    time_s[count] = Math.min(row_s, grid_s);
    if (row_s <= grid_s + SAME_s) {
      row[count] = i++;
    }
    if (grid_s <= row_s + SAME_s) {
      second[count] = k++;
    }
    count++;
  }
  return { count, time_s: time_s.slice(0, count), row: row.slice(0, count), second: second.slice(0, count), seconds };
}

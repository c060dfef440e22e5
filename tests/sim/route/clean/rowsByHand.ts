import type { RowColumns } from "../../../../sim/route/clean/rows/rowColumns.ts";
import type { Fix } from "../../../../sim/route/log/fixes.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

/** A row as far as it is stated; places in metres north and east of 50 N 8 E. */
export type RowByHand = Partial<Fix> & { readonly time_s: number; readonly north_m?: number; readonly east_m?: number };

/** Rows of a log as they are cleaned. */
export function rowsOf(...rows: readonly RowByHand[]): RowColumns {
  return madeLog(rows).fixes;
}

/** So many rows a second apart, each by its number. */
export function everySecond(count: number, row: (i: number) => Omit<RowByHand, "time_s">): RowColumns {
  return rowsOf(...Array.from({ length: count }, (_, i) => ({ time_s: i, ...row(i) })));
}

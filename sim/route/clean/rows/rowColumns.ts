import type { Fixes } from "../../log/fixes.ts";
import type { Ordered } from "./orderInTime.ts";

/** The rows that are cleaned, in rising time; positions dropped on the way become NaN, the rest of the row stays. */
export type RowColumns = Pick<
  Fixes,
  "count" | "time_s" | "latitude_deg" | "longitude_deg" | "speed_mps" | "elevation_m" | "segment"
>;

/** The columns of a log in the order found. */
export function rowColumns(fixes: Fixes, ordered: Ordered): RowColumns {
  const pick = (column: Float64Array) => Float64Array.from(ordered.rows, (row) => column[row]);
  return {
    count: ordered.rows.length,
    time_s: ordered.time_s,
    latitude_deg: pick(fixes.latitude_deg),
    longitude_deg: pick(fixes.longitude_deg),
    speed_mps: pick(fixes.speed_mps),
    elevation_m: pick(fixes.elevation_m),
    segment: Uint32Array.from(ordered.rows, (row) => fixes.segment[row]),
  };
}

/** The rows that are to be kept, in order. */
export function keptRows(rows: RowColumns, isKept: Uint8Array): RowColumns {
  const pick = (column: Float64Array) => column.filter((_, i) => isKept[i] === 1);
  return {
    count: isKept.reduce((sum, each) => sum + each, 0),
    time_s: pick(rows.time_s),
    latitude_deg: pick(rows.latitude_deg),
    longitude_deg: pick(rows.longitude_deg),
    speed_mps: pick(rows.speed_mps),
    elevation_m: pick(rows.elevation_m),
    segment: rows.segment.filter((_, i) => isKept[i] === 1),
  };
}

/** Takes the position out of a row. */
export function dropPosition(rows: RowColumns, i: number): void {
  rows.latitude_deg[i] = Number.NaN;
  rows.longitude_deg[i] = Number.NaN;
}

/** Rows that have a position, in order. */
export function positioned(rows: RowColumns): Uint32Array {
  const found = new Uint32Array(rows.count);
  let n = 0;
  for (let i = 0; i < rows.count; i++) {
    if (!Number.isNaN(rows.latitude_deg[i])) {
      found[n++] = i;
    }
  }
  return found.slice(0, n);
}

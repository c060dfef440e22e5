import type { RawSeries } from "../report/cleanedLog.ts";
import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RowColumns } from "./rowColumns.ts";

/** Speed and height as logged, row by row; without recorded speeds, from each position straight to the next. */
export function rawSeries(rows: RowColumns): RawSeries {
  const speed_mps = Float64Array.from(rows.speed_mps);
  let last = -1;
  for (let i = 0; i < rows.count; i++) {
    if (Number.isNaN(rows.lat_deg[i])) {
      continue;
    }
    if (last >= 0 && Number.isNaN(speed_mps[i])) {
      const { length_m } = geodesicLeg(rows.lat_deg[last], rows.lon_deg[last], rows.lat_deg[i], rows.lon_deg[i]);
      speed_mps[i] = length_m / (rows.time_s[i] - rows.time_s[last]);
    }
    last = i;
  }
  return { time_s: Float64Array.from(rows.time_s), speed_mps, height_m: Float64Array.from(rows.height_m) };
}

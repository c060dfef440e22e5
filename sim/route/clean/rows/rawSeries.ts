import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RawSeries } from "../report/cleanedLog.ts";
import type { RowColumns } from "./rowColumns.ts";

/** Speed and height as logged, row by row; without recorded speeds, from each position straight to the next. */
export function rawSeries(rows: RowColumns): RawSeries {
  const speed_mps = Float64Array.from(rows.speed_mps);
  let last = -1;
  for (let i = 0; i < rows.count; i++) {
    if (Number.isNaN(rows.latitude_deg[i])) {
      continue;
    }
    if (last >= 0 && Number.isNaN(speed_mps[i])) {
      const { length_m } = geodesicLeg(
        rows.latitude_deg[last],
        rows.longitude_deg[last],
        rows.latitude_deg[i],
        rows.longitude_deg[i],
      );
      speed_mps[i] = length_m / (rows.time_s[i] - rows.time_s[last]);
    }
    last = i;
  }
  return { time_s: Float64Array.from(rows.time_s), speed_mps, elevation_m: Float64Array.from(rows.elevation_m) };
}

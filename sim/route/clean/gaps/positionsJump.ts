import { FASTEST_CAR_mps } from "../../log/fastestCar.ts";
import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RowColumns } from "../rows/rowColumns.ts";

/** Whether no car could have come from the fix before row i to it: the log goes on somewhere else. */
export function positionsJump(rows: RowColumns, i: number): boolean {
  if (Number.isNaN(rows.latitude_deg[i]) || Number.isNaN(rows.latitude_deg[i - 1])) {
    return false;
  }
  const dLat_m = Math.abs(rows.latitude_deg[i] - rows.latitude_deg[i - 1]) * 111200;
  const dt_s = rows.time_s[i] - rows.time_s[i - 1];
  // Latitude alone first: it costs nothing and clears most rows.
  if (dLat_m < 100 && Math.abs(rows.longitude_deg[i] - rows.longitude_deg[i - 1]) * 111400 < 100) {
    return false;
  }
  const leg = geodesicLeg(
    rows.latitude_deg[i - 1],
    rows.longitude_deg[i - 1],
    rows.latitude_deg[i],
    rows.longitude_deg[i],
  );
  return leg.length_m > 100 + FASTEST_CAR_mps * dt_s;
}

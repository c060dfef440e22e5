import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RowColumns } from "./rowColumns.ts";

const PIECE_s = 60;
/** A piece tells something only where the positions move this far in its minute: three times a bad receiver's correlated noise. */
const LEAST_m = 150;
const LEAST_PIECES = 3;

/**
 * False where recorded speeds have nothing to do with the positions: a column of zeros, or one that is frozen. Over pieces
 * of a minute in which the positions move 150 m or more, the distance by speed must lie between half and four times the
 * straight line (a road winds, but not more). True where there is too little to tell.
 */
export function speedsAgree(rows: RowColumns): boolean {
  let pieces = 0;
  let straight_m = 0;
  let driven_m = 0;
  let start = -1;
  let last = -1;
  let piece_m = 0;
  for (let i = 0; i < rows.count; i++) {
    if (Number.isNaN(rows.speed_mps[i]) || Number.isNaN(rows.latitude_deg[i])) {
      continue;
    }
    const dt_s = last >= 0 ? rows.time_s[i] - rows.time_s[last] : Number.NaN;
    if (start < 0 || !(dt_s <= PIECE_s)) {
      start = i;
      piece_m = 0;
    } else {
      piece_m += 0.5 * (rows.speed_mps[i] + rows.speed_mps[last]) * dt_s;
      if (rows.time_s[i] - rows.time_s[start] >= PIECE_s) {
        const { length_m } = geodesicLeg(
          rows.latitude_deg[start],
          rows.longitude_deg[start],
          rows.latitude_deg[i],
          rows.longitude_deg[i],
        );
        if (length_m >= LEAST_m) {
          pieces++;
          straight_m += length_m;
          driven_m += piece_m;
        }
        start = i;
        piece_m = 0;
      }
    }
    last = i;
  }
  return pieces < LEAST_PIECES || (driven_m > 0.5 * straight_m && driven_m < 4 * straight_m);
}

import { median } from "simple-statistics";
import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "./rowColumns.ts";

/** Pieces of some 80 m driven fast: short enough for a bend, long enough for the noise of both ends to average out. */
const LEAST_mps = 8;
const PIECE_m = 80;
const LEAST_PIECES = 40;
/** Bends make the straight line up to 2 % shorter than the road (over three makers of logs), noise 1 % longer, so below this the two are taken to agree. A dashboard may by law read up to 10 % high and never low [UNR39, para 5.3]. */
const AGREED_frac = 0.025;
const MOST_frac = 0.2;

/** Between fixes further apart than this the speeds tell too little of the way. */
const NEAR_s = 2.5;

/** What is known of the scale of recorded speeds. */
export interface SpeedScale {
  /** Factor that brings them to the positions' scale; 1 where they agree, or where the log does not tell. */
  readonly ratio: number;
  /** False where fixes are near and yet the speeds were not compared with the positions: then they may read high or low. */
  readonly isKnown: boolean;
}

/**
 * Factor that brings recorded speeds to the positions' scale: 1 where they agree within 2.5 %, or where the log has
 * too few fast pieces to tell. Said as a repair where it is not 1.
 */
export function speedScale(rows: RowColumns, interval_s: number, repairs: RepairList): SpeedScale {
  const ratios: number[] = [];
  let start = -1;
  let last = -1;
  let driven_m = 0;
  for (let i = 0; i < rows.count; i++) {
    if (Number.isNaN(rows.speed_mps[i]) || Number.isNaN(rows.latitude_deg[i])) {
      continue;
    }
    const dt_s = last >= 0 ? rows.time_s[i] - rows.time_s[last] : Number.NaN;
    if (start >= 0 && dt_s <= NEAR_s && rows.speed_mps[i] > LEAST_mps) {
      driven_m += 0.5 * (rows.speed_mps[i] + rows.speed_mps[last]) * dt_s;
      if (driven_m > PIECE_m) {
        const chord = geodesicLeg(
          rows.latitude_deg[start],
          rows.longitude_deg[start],
          rows.latitude_deg[i],
          rows.longitude_deg[i],
        );
        ratios.push(chord.length_m / driven_m);
        start = -1;
      }
    } else {
      start = -1;
    }
    if (start < 0) {
      start = rows.speed_mps[i] > LEAST_mps ? i : -1;
      driven_m = 0;
    }
    last = i;
  }
  if (!repairs.does("speedScale")) return { ratio: 1, isKnown: false };
  if (ratios.length < LEAST_PIECES) return { ratio: 1, isKnown: interval_s > NEAR_s };
  const ratio = median(ratios);
  if (Math.abs(ratio - 1) < AGREED_frac || Math.abs(ratio - 1) > MOST_frac) {
    return { ratio: 1, isKnown: Math.abs(ratio - 1) <= MOST_frac };
  }
  const percent = Math.abs(100 * (1 / ratio - 1)).toPrecision(2);
  const detail = `recorded speed reads ${percent} % ${ratio < 1 ? "high" : "low"} against the positions; corrected`;
  repairs.add("speedScale", 1, rows.time_s[0], rows.time_s[rows.count - 1], detail);
  return { ratio, isKnown: true };
}

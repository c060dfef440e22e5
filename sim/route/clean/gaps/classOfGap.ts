import { FASTEST_CAR_mps } from "../../log/fastestCar.ts";
import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import { nearestPosition, speedNear_mps } from "../rows/rowsNear.ts";

/** Without a fix for longer than this no speed is made up: the drive is cut there. */
const LONGEST_BRIDGE_s = 600;
/** A parked gap up to this is filled with standing, so that the user may choose what splits a trip; beyond, it is cut. */
const LONGEST_FILLED_PARKING_s = 7200;
/** A car that left from within this distance of where it was lost had not driven: receivers start up this far off. */
const PARKED_RADIUS_m = 150;
const GARAGE_RADIUS_m = 500;
/** A car that was hardly moving on both sides of a gap and is found this near did not move; its receiver did. */
const STANDING_RADIUS_m = 30;
const SLOW_mps = 2;
const MOVING_mps = 3;

/** What a gap is held to have been, and whether the log is to be cut there. */
export interface GapClass {
  readonly kind: "tunnel" | "signalLoss" | "parked";
  readonly isCut: boolean;
  /** Straight distance between the positions on both sides; NaN where one has none. */
  readonly distance_m: number;
}

/**
 * The class of the gap before row i: parked where the car is found where it was lost, a tunnel where it was moving before
 * and after and the distance fits its speed, lost signal otherwise. The classes are told apart by one another, in this order.
 */
export function classOfGap(rows: RowColumns, i: number, interval_s: number): GapClass {
  const before = nearestPosition(rows, i - 1, -1, interval_s);
  const after = nearestPosition(rows, i, 1, interval_s);
  const dt_s = rows.time_s[i] - rows.time_s[i - 1];
  const speeds = [speedNear_mps(rows, i - 1, -1), speedNear_mps(rows, i, 1)] as const;
  if (before < 0 || after < 0) {
    const isParked = !(speeds[0] > 1) && !(speeds[1] > 1);
    const isCut = dt_s > (isParked ? LONGEST_FILLED_PARKING_s : LONGEST_BRIDGE_s / 10);
    return { kind: isParked ? "parked" : "signalLoss", isCut, distance_m: Number.NaN };
  }
  const { length_m } = geodesicLeg(
    rows.latitude_deg[before],
    rows.longitude_deg[before],
    rows.latitude_deg[after],
    rows.longitude_deg[after],
  );
  const mean_mps = length_m / dt_s;
  const isNear = length_m < PARKED_RADIUS_m && mean_mps < 1 && dt_s >= 30;
  const isSlow = !(speeds[0] > SLOW_mps) && !(speeds[1] > SLOW_mps);
  if (isNear || (isSlow && length_m < STANDING_RADIUS_m) || (dt_s >= LONGEST_BRIDGE_s && length_m < GARAGE_RADIUS_m)) {
    return { kind: "parked", isCut: dt_s > LONGEST_FILLED_PARKING_s, distance_m: length_m };
  }
  const isBroken = rows.segment[i] !== rows.segment[i - 1];
  const isMoving = speeds[0] > MOVING_mps && speeds[1] > MOVING_mps;
  const usual_mps = 0.5 * (speeds[0] + speeds[1]);
  if (isMoving && mean_mps > 0.5 * usual_mps && mean_mps < 1.7 * usual_mps && dt_s <= LONGEST_BRIDGE_s) {
    return { kind: "tunnel", isCut: false, distance_m: length_m };
  }
  const isCut = dt_s > LONGEST_BRIDGE_s || mean_mps > FASTEST_CAR_mps || isBroken;
  return { kind: "signalLoss", isCut, distance_m: length_m };
}

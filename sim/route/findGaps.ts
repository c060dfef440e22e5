// Longer than most files: the classes of gap are told apart by one another.
import { median } from "simple-statistics";
import type { LongGap } from "./cleanedLog.ts";
import { geodesicLeg } from "./geodesicLeg.ts";
import { writeClock, writeDuration } from "./readTime.ts";
import type { RepairList } from "./repairList.ts";
import type { RowColumns } from "./rowColumns.ts";
import { writeFar } from "./writeFar.ts";

/** A gap inside a stretch, bridged: rows `from` and `from + 1` lie on its sides. */
export interface Bridge {
  readonly from: number;
  readonly kind: "tunnel" | "signalLoss" | "parked";
}

/** Rows from `from` to `to` (not included) that are cleaned as one, with the gaps in them to be bridged. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly bridges: readonly Bridge[];
}

export interface GapFindings {
  readonly stretches: readonly Stretch[];
  /** Gaps between stretches; `row` here is the first row of the log after the gap. */
  readonly gaps: readonly LongGap[];
  readonly interval_s: number;
}

/** Between fixes no further apart than this nothing is lost; where they do not fit, the positions jump. */
const JUMP_s = 3;
/** Without a fix for longer than this no speed is made up: the drive is cut there. */
const LONGEST_BRIDGE_s = 600;
/** Fixes further apart are gaps however regular they are: in three minutes a car can be anywhere in a town. */
const LONGEST_STEP_s = 180;
/** A parked gap up to this is filled with standing, so that the user may choose what splits a trip; beyond, it is cut. */
const LONGEST_FILLED_PARKING_s = 7200;
/** A car that left from within this distance of where it was lost had not driven: receivers start up this far off. */
const PARKED_RADIUS_m = 150;
const GARAGE_RADIUS_m = 500;
/** A car that was hardly moving on both sides of a gap and is found this near did not move; its receiver did. */
const STANDING_RADIUS_m = 30;
const SLOW_mps = 2;
const FASTEST_mps = 70;
const MOVING_mps = 3;

/**
 * Cuts the log where it cannot be bridged, and classes every gap longer than three usual intervals (5 s at least):
 * parked (the car is found where it was lost), tunnel (it was moving before and after, and the distance fits its
 * speed), or signal loss (anything else: bridged up to ten minutes, cut beyond or where no car could have driven it).
 */
export function findGaps(rows: RowColumns, repairs: RepairList, utcOffset_s: number): GapFindings {
  const interval_s = usualInterval_s(rows);
  const longest_s = Math.min(LONGEST_STEP_s, Math.max(5, 3 * interval_s));
  const stretches: Stretch[] = [];
  const gaps: LongGap[] = [];
  let from = 0;
  let bridges: Bridge[] = [];
  const cut = (at: number) => {
    stretches.push({ from, to: at, bridges });
    from = at;
    bridges = [];
  };
  for (let i = 1; i < rows.count; i++) {
    const dt_s = rows.time_s[i] - rows.time_s[i - 1];
    if (dt_s <= longest_s && !isBroken(rows, i)) {
      continue;
    }
    const gap = classed(rows, i, interval_s);
    const isCut = gap.isCut || !repairs.does(gap.kind); // a bridge that is not wanted leaves a cut
    describe(gap, isCut, rows, i, repairs, utcOffset_s);
    if (isCut) {
      const kind = gap.kind === "parked" ? "parked" : "signalLoss";
      gaps.push({ row: i, kind, from_s: rows.time_s[i - 1], to_s: rows.time_s[i], distance_m: gap.distance_m });
      cut(i);
    } else {
      bridges.push({ from: i - 1, kind: gap.kind });
    }
  }
  cut(rows.count);
  return { stretches, gaps, interval_s };
}

interface Gap {
  readonly kind: Bridge["kind"];
  readonly isCut: boolean;
  readonly distance_m: number;
}

function classed(rows: RowColumns, i: number, interval_s: number): Gap {
  const before = nearestPosition(rows, i - 1, -1, interval_s);
  const after = nearestPosition(rows, i, 1, interval_s);
  const dt_s = rows.time_s[i] - rows.time_s[i - 1];
  const speeds = [speedNear(rows, i - 1, -1), speedNear(rows, i, 1)] as const;
  if (before < 0 || after < 0) {
    const isParked = !(speeds[0] > 1) && !(speeds[1] > 1);
    const isCut = dt_s > (isParked ? LONGEST_FILLED_PARKING_s : LONGEST_BRIDGE_s / 10);
    return { kind: isParked ? "parked" : "signalLoss", isCut, distance_m: Number.NaN };
  }
  const { length_m } = geodesicLeg(
    rows.lat_deg[before],
    rows.lon_deg[before],
    rows.lat_deg[after],
    rows.lon_deg[after],
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
  const isCut = dt_s > LONGEST_BRIDGE_s || mean_mps > FASTEST_mps || isBroken;
  return { kind: "signalLoss", isCut, distance_m: length_m };
}

function describe(
  gap: Gap,
  isCut: boolean,
  rows: RowColumns,
  i: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  const [from_s, to_s] = [rows.time_s[i - 1], rows.time_s[i]];
  const long = writeDuration(to_s - from_s);
  const at = writeClock(from_s, utcOffset_s);
  const far = Number.isNaN(gap.distance_m) ? "" : `, ${writeFar(gap.distance_m)}`;
  if (gap.kind === "parked") {
    repairs.add(
      "parked",
      1,
      from_s,
      to_s,
      `${to_s - from_s < 180 ? "stood" : "parked"} ${long} without a log at ${at}`,
    );
  } else if (isCut) {
    // Hardly a gap, but the place is another: a receiver that woke up where it was last, or two logs in one.
    const detail =
      to_s - from_s <= JUMP_s
        ? `the positions jump${far.replace(",", "")} at ${at}: cut there, the jump not counted`
        : `a gap of ${long} at ${at} cut out${far}, not counted`;
    repairs.add("signalLoss", 1, from_s, to_s, detail);
  } else {
    const as = gap.kind === "tunnel" ? "as a tunnel" : "as lost signal";
    repairs.add(gap.kind, 1, from_s, to_s, `a gap of ${long} at ${at} bridged ${as}${far}`);
  }
}

/** A jump between two near fixes that no car could make is a cut too: the log goes on somewhere else. */
function isBroken(rows: RowColumns, i: number): boolean {
  if (Number.isNaN(rows.lat_deg[i]) || Number.isNaN(rows.lat_deg[i - 1])) {
    return false;
  }
  const dLat_m = Math.abs(rows.lat_deg[i] - rows.lat_deg[i - 1]) * 111200;
  const dt_s = rows.time_s[i] - rows.time_s[i - 1];
  // Latitude alone first: it costs nothing and clears most rows.
  if (dLat_m < 100 && Math.abs(rows.lon_deg[i] - rows.lon_deg[i - 1]) * 111400 < 100) {
    return false;
  }
  const leg = geodesicLeg(rows.lat_deg[i - 1], rows.lon_deg[i - 1], rows.lat_deg[i], rows.lon_deg[i]);
  return leg.length_m > 100 + FASTEST_mps * dt_s;
}

/** Recorded speed near a row, or else from the positions of the last seconds on that side. */
function speedNear(rows: RowColumns, i: number, side: -1 | 1): number {
  let sum = 0;
  let count = 0;
  let far = -1;
  for (let k = i; k >= 0 && k < rows.count && Math.abs(rows.time_s[k] - rows.time_s[i]) <= 10; k += side) {
    if (!Number.isNaN(rows.speed_mps[k]) && Math.abs(rows.time_s[k] - rows.time_s[i]) <= 3) {
      sum += rows.speed_mps[k];
      count++;
    }
    if (!Number.isNaN(rows.lat_deg[k])) {
      far = k;
    }
  }
  if (count > 0) {
    return sum / count;
  }
  const near = nearestPosition(rows, i, side, 5);
  if (far < 0 || near < 0 || far === near) {
    return Number.NaN;
  }
  const { length_m } = geodesicLeg(rows.lat_deg[near], rows.lon_deg[near], rows.lat_deg[far], rows.lon_deg[far]);
  return length_m / Math.abs(rows.time_s[far] - rows.time_s[near]);
}

function nearestPosition(rows: RowColumns, i: number, side: -1 | 1, interval_s: number): number {
  const within_s = Math.max(15, 2 * interval_s);
  for (let k = i; k >= 0 && k < rows.count && Math.abs(rows.time_s[k] - rows.time_s[i]) <= within_s; k += side) {
    if (!Number.isNaN(rows.lat_deg[k])) {
      return k;
    }
  }
  return -1;
}

function usualInterval_s(rows: RowColumns): number {
  const every = Math.max(1, Math.floor(rows.count / 20000));
  const steps: number[] = [];
  for (let i = 1; i < rows.count; i += every) {
    steps.push(rows.time_s[i] - rows.time_s[i - 1]);
  }
  return median(steps);
}

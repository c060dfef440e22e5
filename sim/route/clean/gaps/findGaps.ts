import { median } from "simple-statistics";
import type { LongGap } from "../report/cleanedLog.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import { classOfGap, type GapClass } from "./classOfGap.ts";
import { noteGap } from "./noteGap.ts";
import { positionsJump } from "./positionsJump.ts";

/** A gap inside a segment, bridged: rows `from` and `from + 1` lie on its sides. */
interface Bridge {
  readonly from: number;
  readonly kind: GapClass["kind"];
}

/** Rows from `from` to `to` (not included) that are cleaned as one, with the gaps in them to be bridged. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly bridges: readonly Bridge[];
}

export interface GapFindings {
  readonly segments: readonly Segment[];
  /** Gaps between segments; `row` here is the first row of the log after the gap. */
  readonly gaps: readonly LongGap[];
  readonly interval_s: number;
}

/** Fixes further apart are gaps however regular they are: in three minutes a car can be anywhere in a town. */
const LONGEST_STEP_s = 180;

/** Faster than this a car is under way, and a receiver's wander seldom. */
const MOVING_mps = 2;
const LEAST_MOVING = 20;
/** Metres in a degree, to half a percent: for telling motion from standing. */
const M_PER_DEG = 111_300;

/**
 * Cuts the log where it cannot be bridged, and classes every gap longer than three usual intervals (5 s at least):
 * parked (the car is found where it was lost), tunnel (it was moving before and after, and the distance fits its
 * speed), or signal loss (anything else: bridged up to ten minutes, cut beyond or where no car could have driven it).
 * `setAside` says how many fixes of standing were taken out behind the row of a time.
 */
export function findGaps(
  rows: RowColumns,
  repairs: RepairList,
  utcOffset_s: number,
  setAside: ReadonlyMap<number, number> = new Map(),
): GapFindings {
  const interval_s = usualInterval_s(rows);
  const longest_s = Math.min(LONGEST_STEP_s, Math.max(5, 3 * interval_s));
  const segments: Segment[] = [];
  const gaps: LongGap[] = [];
  let from = 0;
  let bridges: Bridge[] = [];
  const cut = (at: number) => {
    segments.push({ from, to: at, bridges });
    from = at;
    bridges = [];
  };
  for (let i = 1; i < rows.count; i++) {
    const dt_s = rows.time_s[i] - rows.time_s[i - 1];
    if (dt_s <= longest_s && !positionsJump(rows, i)) {
      continue;
    }
    const gap = classOfGap(rows, i, interval_s);
    const isCut = gap.isCut || !repairs.does(gap.kind); // a bridge that is not wanted leaves a cut
    noteGap(gap, isCut, rows, i, setAside.get(rows.time_s[i - 1]) ?? 0, repairs, utcOffset_s);
    if (isCut) {
      const kind = gap.kind === "parked" ? "parked" : "signalLoss";
      gaps.push({ row: i, kind, from_s: rows.time_s[i - 1], to_s: rows.time_s[i], distance_m: gap.distance_m });
      cut(i);
    } else {
      bridges.push({ from: i - 1, kind: gap.kind });
    }
  }
  cut(rows.count);
  return { segments, gaps, interval_s };
}

/**
 * The middle time from one row to the next while the car moves, from up to some 20,000 of them: a logger may sleep while the car stands.
 * Of all rows where too few show motion.
 */
function usualInterval_s(rows: RowColumns): number {
  const every = Math.max(1, Math.floor(rows.count / 20000));
  const steps: number[] = [];
  const moving: number[] = [];
  for (let i = 1; i < rows.count; i += every) {
    const step_s = rows.time_s[i] - rows.time_s[i - 1];
    steps.push(step_s);
    if (step_s <= LONGEST_STEP_s && isMoving(rows, i, step_s)) moving.push(step_s);
  }
  return median(moving.length >= LEAST_MOVING ? moving : steps);
}

/** True where the recorded speed or, without one, the change of position between a row and the one before is a moving car's. */
function isMoving({ speed_mps, latitude_deg, longitude_deg }: RowColumns, i: number, step_s: number): boolean {
  if (!Number.isNaN(speed_mps[i])) return speed_mps[i] > MOVING_mps;
  const dNorth_deg = latitude_deg[i] - latitude_deg[i - 1];
  const dEast_deg = (longitude_deg[i] - longitude_deg[i - 1]) * Math.cos((latitude_deg[i] * Math.PI) / 180);
  return Math.hypot(dNorth_deg, dEast_deg) * M_PER_DEG > MOVING_mps * step_s;
}

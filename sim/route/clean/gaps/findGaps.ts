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

/**
 * Cuts the log where it cannot be bridged, and classes every gap longer than three usual intervals (5 s at least):
 * parked (the car is found where it was lost), tunnel (it was moving before and after, and the distance fits its
 * speed), or signal loss (anything else: bridged up to ten minutes, cut beyond or where no car could have driven it).
 */
export function findGaps(rows: RowColumns, repairs: RepairList, utcOffset_s: number): GapFindings {
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
    noteGap(gap, isCut, rows, i, repairs, utcOffset_s);
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

/** The middle time from one row to the next, from up to some 20,000 of them. */
function usualInterval_s(rows: RowColumns): number {
  const every = Math.max(1, Math.floor(rows.count / 20000));
  const steps: number[] = [];
  for (let i = 1; i < rows.count; i += every) {
    steps.push(rows.time_s[i] - rows.time_s[i - 1]);
  }
  return median(steps);
}

import { countOf } from "../../log/countOf.ts";
import { writeFar } from "../../log/writeFar.ts";
import { writeClock, writeDuration } from "../../log/writeTime.ts";
import { PARKED_s } from "../report/cleanedLog.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import type { GapClass } from "./classOfGap.ts";

/** Between fixes no further apart than this nothing is lost; where they do not fit, the positions jump. */
const JUMP_s = 3;

/** Says in the list of repairs what was made of the gap before row i, in which so many fixes of standing were set aside. */
export function noteGap(
  gap: GapClass,
  isCut: boolean,
  rows: RowColumns,
  i: number,
  setAside: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  const [from_s, to_s] = [rows.time_s[i - 1], rows.time_s[i]];
  const long = writeDuration(to_s - from_s);
  const at = writeClock(from_s, utcOffset_s);
  const far = Number.isNaN(gap.distance_m) ? "" : `, ${writeFar(gap.distance_m)}`;
  if (gap.kind === "parked") {
    const withoutLog = setAside > 0 ? "" : " without a log";
    const aside = setAside > 0 ? `, ${countOf(setAside, "fix", "fixes")} of it set aside` : "";
    repairs.add(
      "parked",
      1,
      from_s,
      to_s,
      `${to_s - from_s < PARKED_s ? "stood" : "parked"} ${long}${withoutLog} at ${at}${aside}`,
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

import { writeClock, writeDuration } from "../log/writeTime.ts";
import { Mended } from "./report/cleanedLog.ts";
import type { RepairList } from "./report/repairList.ts";

/** Says every time that a segment, one row a second from `start_s`, was held still. */
export function noteStands(flags: Uint8Array, start_s: number, utcOffset_s: number, repairs: RepairList): void {
  let start = -1;
  for (let i = 0; i <= flags.length; i++) {
    const stands = i < flags.length && (flags[i] & Mended.standing) !== 0;
    if (stands && start < 0) {
      start = i;
    } else if (!stands && start >= 0) {
      const from_s = start_s + start;
      const detail = `held still for ${writeDuration(i - start)} at ${writeClock(from_s, utcOffset_s)}`;
      repairs.add("standingDrift", 1, from_s, start_s + i, detail);
      start = -1;
    }
  }
}

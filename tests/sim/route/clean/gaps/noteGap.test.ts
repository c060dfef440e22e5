import { expect, it } from "vitest";
import type { GapClass } from "../../../../../sim/route/clean/gaps/classOfGap.ts";
import { noteGap } from "../../../../../sim/route/clean/gaps/noteGap.ts";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { rowsOf } from "../rowsByHand.ts";

/** What is said of a gap of so many seconds that began at 8:00. */
function said(kind: GapClass["kind"], gap_s: number, { isCut = false, distance_m = 410, setAside = 0 } = {}) {
  const repairs = new RepairList();
  const rows = rowsOf({ time_s: 28_800 }, { time_s: 28_800 + gap_s });
  noteGap({ kind, isCut, distance_m }, isCut, rows, 1, setAside, repairs, 0);
  const [{ kind: as, detail }] = repairs.finish();
  return [as, detail];
}

it("is bridged as a tunnel or as lost signal, with its length", () => {
  expect(said("tunnel", 60)).toEqual(["tunnel", "a gap of 1 min at 08:00:00 bridged as a tunnel, 410 m"]);
  expect(said("signalLoss", 60, { distance_m: Number.NaN })[1]).toBe(
    "a gap of 1 min at 08:00:00 bridged as lost signal",
  );
});

it("is cut out, or a jump where hardly any time passed", () => {
  expect(said("tunnel", 60, { isCut: true })).toEqual([
    "signalLoss",
    "a gap of 1 min at 08:00:00 cut out, 410 m, not counted",
  ]);
  expect(said("signalLoss", 3, { isCut: true })[1]).toBe(
    "the positions jump 410 m at 08:00:00: cut there, the jump not counted",
  );
});

it("is parked from three minutes on, with what of it was set aside", () => {
  expect(said("parked", 179)[1]).toBe("stood 2 min 59 s without a log at 08:00:00");
  expect(said("parked", 180, { setAside: 12 })[1]).toBe("parked 3 min at 08:00:00, 12 fixes of it set aside");
});

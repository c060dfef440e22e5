import { expect, it } from "vitest";
import { noteStands } from "../../../../sim/route/clean/noteStandstills.ts";
import { Mended } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { RepairList } from "../../../../sim/route/clean/report/repairList.ts";

it("says each time that a segment was held still, the last one at its end too", () => {
  const flags = Uint8Array.from("0110001".split(""), (each) => (each === "1" ? Mended.standing : Mended.bridged));
  const repairs = new RepairList();
  noteStands(flags, 3600, 0, repairs);
  const [{ kind, count, events }] = repairs.finish();
  expect({ kind, count }).toEqual({ kind: "standingDrift", count: 2 });
  expect(events.map(({ detail }) => detail)).toEqual([
    "held still for 2 s at 01:00:01",
    "held still for 1 s at 01:00:06",
  ]);
});

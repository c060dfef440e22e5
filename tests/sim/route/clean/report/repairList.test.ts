import { expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";

it("gathers repairs by their class, in order of time, and counts them together", () => {
  const repairs = new RepairList();
  repairs.add("wildFix", 2, 50, 60, "second");
  repairs.add("wildFix", 1, 10, 10, "first");
  const [{ count, detail, from_s, to_s, events }] = repairs.finish();
  expect({ count, from_s, to_s }).toEqual({ count: 3, from_s: 10, to_s: 60 });
  expect(events.map((event) => event.detail)).toEqual(["first", "second"]);
  expect(detail).toBe("3 wild positions dropped: first; second");
});

it("says a single one in its own words", () => {
  const repairs = new RepairList();
  repairs.add("tunnel", 1, 0, 9, "a gap of 9 s");
  expect(repairs.finish()[0].detail).toBe("a gap of 9 s");
});

it("keeps the fifty that matter most, and says that there are others", () => {
  const repairs = new RepairList();
  for (let i = 0; i < 300; i++) repairs.add("duplicate", 1, i, i, `at ${i}`, i);
  const [{ count, events, detail }] = repairs.finish();
  expect(count).toBe(300);
  expect(events.map(({ from_s }) => from_s)).toEqual(Array.from({ length: 50 }, (_, i) => 250 + i));
  expect(detail).toBe("300 repeated fixes dropped: at 250; at 251; at 252; and others");
});

it("knows what is turned off", () => {
  const repairs = new RepairList(["tunnel"]);
  expect([repairs.does("tunnel"), repairs.does("parked"), repairs.count("parked")]).toEqual([false, true, 0]);
});

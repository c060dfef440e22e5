import { expect, it } from "vitest";
import { hasValues, keptFixes } from "../../../../sim/route/log/fixes.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

it("has values where one row has one", () => {
  expect(hasValues(Float64Array.of(Number.NaN, Number.NaN))).toBe(false);
  expect(hasValues(Float64Array.of(Number.NaN, 0))).toBe(true);
  expect(hasValues(new Float64Array(0))).toBe(false);
});

it("keeps whole rows, columns beside the drive included", () => {
  const { fixes } = madeLog([
    { time_s: 1, speed_mps: 10, extras: { packCurrent_A: 5 } },
    { time_s: 2, speed_mps: 11 },
    { time_s: 3, speed_mps: 12, extras: { packCurrent_A: 7 } },
  ]);
  const kept = keptFixes(fixes, (i) => i !== 1);
  expect(kept.count).toBe(2);
  expect([...kept.time_s]).toEqual([1, 3]);
  expect([...kept.line]).toEqual([1, 3]);
  expect([...(kept.extras.packCurrent_A ?? [])]).toEqual([5, 7]);
});

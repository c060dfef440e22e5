import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../../sim/route/clean/cleanLog.ts";
import type { CleanedLog } from "../../../../../sim/route/clean/report/cleanedLog.ts";
import { madeLog, steadyRows } from "../../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const rows = (factor: (i: number) => number) =>
  steadyRows(START_s, 600, 14).map((row, i) => ({ ...row, speed_mps: 14 * factor(i) }));
const length_m = (log: CleanedLog) => log.series.distance_m[log.series.count - 1];
const scaled = (log: CleanedLog) => log.repairs.find(({ kind }) => kind === "speedScale")?.detail;

describe("recorded speeds off by one factor against the positions", () => {
  it.each([
    [3.6, "recorded speeds are 3.6 times those from the positions, as km/h read as m/s do: divided by 3.6"],
    [1 / 3.6, "recorded speeds are 0.278 times those from the positions, as m/s read as km/h do: divided by 0.278"],
    [1.609344, "recorded speeds are 1.61 times those from the positions, as km/h read as mph do: divided by 1.61"],
    [10, "recorded speeds are 10 times those from the positions: divided by 10"],
  ])("of %d are brought to their scale, and it is said", (factor, words) => {
    const log = cleanLog(madeLog(rows(() => factor)));
    expect(scaled(log)).toBe(words);
    expect(length_m(log) / (599 * 14)).toBeCloseTo(1, 2);
  });

  it("are left out where the road does not agree on the factor: they have nothing to do with it", () => {
    const log = cleanLog(madeLog(rows((i) => 0.1 + 0.4 * (Math.floor(i / 60) % 2))));
    expect(scaled(log)).toMatch(/left out/);
    expect(length_m(log) / (599 * 14)).toBeCloseTo(1, 2);
  });
});

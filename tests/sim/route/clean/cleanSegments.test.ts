import { describe, expect, it } from "vitest";
import { cleanSegments } from "../../../../sim/route/clean/cleanSegments.ts";
import { usualRoadLoad } from "../../../../sim/route/clean/draws/wheelEnergy.ts";
import { findGaps } from "../../../../sim/route/clean/gaps/findGaps.ts";
import { Mended } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { RepairList } from "../../../../sim/route/clean/report/repairList.ts";
import type { RowColumns } from "../../../../sim/route/clean/rows/rowColumns.ts";
import { segmentSetting } from "../../../../sim/route/clean/segmentSetting.ts";
import { runSteps } from "../../../../sim/route/log/steps.ts";
import { everySecond, rowsOf } from "./rowsByHand.ts";

function cleaned(rows: RowColumns, repairs = new RepairList()) {
  const found = findGaps(rows, repairs, 0);
  const setting = segmentSetting(rows, found, { incrementNoise_m: 0, offsets: new Map(), spans: [] }, repairs, 0, 1);
  return runSteps(cleanSegments(rows, found, setting, repairs, usualRoadLoad));
}

describe("a drive at 12 m/s, its speeds recorded", () => {
  const { parts, like } = cleaned(everySecond(90, (i) => ({ north_m: 12 * i, speed_mps: 12, elevation_m: 100 })));
  it("keeps its way and its height", () => {
    const [{ distance_m, elevation_m, flags }] = parts;
    // 89 s at 12 m/s, known to a hundredth.
    expect(Math.abs(distance_m[89] / 1068 - 1)).toBeLessThan(0.01);
    expect(Math.abs(elevation_m[45] - 100)).toBeLessThan(1);
    expect(flags.every((flag) => (flag & Mended.standing) === 0)).toBe(true);
  });
  it("is held to be like no cycle, since its fixes are dense", () => {
    expect(like).toBeUndefined();
    expect(parts[0].pieces).toHaveLength(1);
  });
});

it("cleans each segment by itself", () => {
  const leg = (from_s: number, from_m: number) =>
    Array.from({ length: 60 }, (_, i) => ({ time_s: from_s + i, north_m: from_m + 12 * i, speed_mps: 12 }));
  const { parts } = cleaned(rowsOf(...leg(0, 0), ...leg(2000, 50_000)));
  expect(parts.map(({ start_s }) => start_s)).toEqual([0, 2000]);
});

it("has speeds as logged where no smoothing is wanted, and no draws beside them", () => {
  const rows = everySecond(60, (i) => ({ north_m: 12 * i, speed_mps: i === 30 ? 13 : 12 }));
  const [{ speed_mps, pieces }] = cleaned(rows, new RepairList(["speedNoise"])).parts;
  expect([speed_mps[29], speed_mps[30]]).toEqual([12, 13]);
  expect(pieces).toEqual([]);
});

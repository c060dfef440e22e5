import { expect, it } from "vitest";
import { drawSegment, knowSegment } from "../../../../sim/route/clean/cleanSegment.ts";
import { findGaps } from "../../../../sim/route/clean/gaps/findGaps.ts";
import { RepairList } from "../../../../sim/route/clean/report/repairList.ts";
import type { RowColumns } from "../../../../sim/route/clean/rows/rowColumns.ts";
import { segmentSetting } from "../../../../sim/route/clean/segmentSetting.ts";
import { runSteps } from "../../../../sim/route/log/steps.ts";
import { everySecond } from "./rowsByHand.ts";

function known(rows: RowColumns, repairs = new RepairList()) {
  const found = findGaps(rows, repairs, 0);
  const setting = segmentSetting(rows, found, { incrementNoise_m: 0, offsets: new Map(), spans: [] }, repairs, 0, 1);
  const segment = runSteps(knowSegment(rows, found.segments[0], setting, repairs));
  return { segment, setting, repairs };
}
const drive = everySecond(90, (i) => ({ north_m: 12 * i, speed_mps: 12 }));

it("lays positions along the road that they show", () => {
  const { segment } = known(drive);
  expect(segment.isEmpty).toBe(false);
  // Metres of a degree are good to a few parts in ten thousand; a receiver without noise is trusted to a metre.
  expect(Math.abs(segment.known.at_m[80] - segment.known.at_m[10] - 840)).toBeLessThan(2);
  expect(segment.raw_mps).toBeUndefined();
});

it("has speeds as logged where no smoothing is wanted", () => {
  const { segment } = known(drive, new RepairList(["speedNoise"]));
  expect([...(segment.raw_mps ?? [])]).toEqual(new Array(90).fill(12));
});

it("draws drives of what is known, and none of nothing", () => {
  const { segment, setting, repairs } = known(drive);
  const driver = { factor_ratio: 1, bands_mps2: undefined };
  const { drives } = runSteps(drawSegment(segment, setting, driver, repairs));
  expect(drives?.seconds).toBe(90);
  const empty = runSteps(drawSegment({ ...segment, isEmpty: true }, setting, driver, repairs));
  expect(empty).toMatchObject({ drives: undefined, raw_mps: undefined });
});

import { expect, it } from "vitest";
import { Mended } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { layOut } from "../../../../sim/route/clean/rows/plane.ts";
import { timeline } from "../../../../sim/route/clean/rows/timeline.ts";
import { segmentGrid, standingSegment } from "../../../../sim/route/clean/segmentGrid.ts";
import { rowsOf } from "./rowsByHand.ts";

/** Rows at 0, 1 and 3 s. */
const rows = rowsOf({ time_s: 100, north_m: 0 }, { time_s: 101, north_m: 10 }, { time_s: 103, north_m: 30 });
const segment = { from: 0, to: 3, bridges: [] };
const line = timeline(rows, 0, 3);
const plane = layOut(rows.latitude_deg, rows.longitude_deg);

it("has a row a second, bridged where it was driven over a gap, with smoothed places in degrees", () => {
  const north_m = Float64Array.of(0, 10, 20, 30);
  const still = new Float64Array(4);
  const smoothed = { east_m: still, north_m, eastSpeed_mps: still, northSpeed_mps: still };
  const grid = segmentGrid(rows, segment, line, plane, { isDriven: Uint8Array.of(0, 0, 1, 0), smoothed });
  expect(grid.start_s).toBe(100);
  expect([...grid.flags]).toEqual([0, 0, Mended.bridged, 0]);
  // Half way between its neighbours; metres of a degree are good to a few parts in ten thousand.
  expect(grid.latitude_deg[2]).toBeCloseTo((rows.latitude_deg[1] + rows.latitude_deg[2]) / 2, 6);
  expect(grid.longitude_deg[2]).toBeCloseTo(8, 9);
});

it("has no places of a log without positions", () => {
  const grid = segmentGrid(rows, segment, line, plane, { isDriven: new Uint8Array(4), smoothed: undefined });
  expect(grid.latitude_deg.every(Number.isNaN)).toBe(true);
});

it("stands where it began where nothing else is known", () => {
  const standing = standingSegment(rows, segment, line);
  expect([...standing.speed_mps]).toEqual([0, 0, 0, 0]);
  expect([...standing.latitude_deg]).toEqual(new Array(4).fill(rows.latitude_deg[0]));
});

import { randomNormal } from "d3-random";
import { expect, it } from "vitest";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { findJumps } from "../../../../../sim/route/clean/rows/findJumps.ts";
import { seeded } from "../../../../logs/logMaker.ts";
import { madeLog } from "../../../../logs/madeFixes.ts";

it("shows the noise of the positions' changes by its standard deviation", () => {
  const normal = randomNormal.source(seeded(3))(0, 0.4);
  let [north_m, east_m] = [0, 0];
  const rows = Array.from({ length: 3000 }, (_, time_s) => {
    north_m += 15 + normal();
    east_m += normal();
    return { time_s, north_m, east_m };
  });
  const { incrementNoise_m, offsets } = findJumps(madeLog(rows).fixes, new RepairList([]), 0);
  // The median of six neighbours, taken off each change, has a variance of its own: of 1/6 (a mean) to pi/2 of that (a median
  // of many), so that the deviation is that of one change times 1.08 to 1.12. Of 6,000 it is known to 2 %.
  expect(incrementNoise_m / 0.4).toBeGreaterThan(1.08 - 0.04);
  expect(incrementNoise_m / 0.4).toBeLessThan(1.12 + 0.04);
  expect(offsets.size).toBe(0);
});

import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../../sim/route/clean/cleanLog.ts";
import type { CleanedLog } from "../../../../../sim/route/clean/report/cleanedLog.ts";
import { splitTrips } from "../../../../../sim/route/trips/splitTrips.ts";
import { madeLog } from "../../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const S_PER_H = 3600;
const length_m = (log: CleanedLog) => log.series.distance_m[log.series.count - 1];
const words = (log: CleanedLog) => log.repairs.map(({ detail }) => detail).join("; ");
/** Fixes of a parked car, whose receiver wanders by metres, or indoors by tens of metres. */
const parked = (from_s: number, count: number, every_s: number, wander_m: number, north_m = 0) =>
  Array.from({ length: count }, (_, i) => ({
    time_s: from_s + i * every_s,
    north_m: north_m + wander_m * Math.sin((i * every_s) / 90),
    east_m: wander_m * Math.cos((i * every_s) / 70),
  }));

describe("a car that stands for hours", () => {
  it("is not followed second by second: 46 days of a fix an hour come out as two rows", () => {
    const log = cleanLog(madeLog(parked(START_s, 46 * 24, S_PER_H, 5)));
    expect(log.series.count).toBeLessThan(100);
    expect(log.isStill).toBe(true);
    expect(words(log)).toMatch(/parked 46 days at 08:00:00, 1102 fixes of it set aside/);
    expect(log.quality.reasons.join()).not.toMatch(/a fix only every/);
  });

  it("is followed no further through a day at 1 Hz with speeds of nought", () => {
    const rows = parked(START_s, 24 * S_PER_H, 1, 2).map((row) => ({ ...row, speed_mps: 0 }));
    const log = cleanLog(madeLog(rows));
    expect(log.series.count).toBeLessThan(100);
    expect(log.isStill).toBe(true);
  });

  it("stands, though its telephone wanders indoors by tens of metres, every point together", () => {
    const log = cleanLog(madeLog(parked(START_s, S_PER_H, 1, 45)));
    expect(log.isStill).toBe(true);
    expect(length_m(log)).toBeLessThan(1);
    expect(words(log)).toMatch(/positions wander within 6\d(\.\d)? m of one place for .*: taken as standing/);
  });

  it("hides no trip among ten thousand parked fixes, nor makes its interval the trip's", () => {
    const drive = Array.from({ length: 600 }, (_, i) => ({
      time_s: START_s + 300_000 + i,
      north_m: 12 * i,
      east_m: 0,
    }));
    const after = parked(START_s + 300_600, 5000, 60, 3, 12 * 599);
    const log = cleanLog(madeLog([...parked(START_s, 5000, 60, 3), ...drive, ...after]));
    const { trips } = splitTrips(log);
    expect(trips).toHaveLength(1);
    // 599 s at 12 m/s; the receiver's wander at both ends is worth some tens of metres.
    expect(trips[0].characteristics.distance_m / (599 * 12)).toBeCloseTo(1, 1);
    expect(log.quality.interval_s).toBe(1);
    expect(log.quality.reasons.join("; ")).toMatch(
      /the car drives for (9|10) min( \d+ s)? of 6\.\d+ days; the rest it stands/,
    );
  });

  it("is not taken for one that drives round a yard with recorded speeds", () => {
    const rows = Array.from({ length: 3 * S_PER_H }, (_, i) => ({
      time_s: START_s + i,
      north_m: 60 * Math.sin(i / 12),
      east_m: 60 * Math.cos(i / 12),
      speed_mps: 5,
    }));
    expect(length_m(cleanLog(madeLog(rows))) / (5 * 3 * S_PER_H)).toBeCloseTo(1, 1);
  });
});

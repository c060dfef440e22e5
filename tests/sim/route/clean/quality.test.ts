import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import type { CleanedLog } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { madeLog, steadyRows } from "../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8) / 1000;
const reasons = (log: CleanedLog) => log.quality.reasons.join("; ");
/** Twenty minutes of speeds between 8 and 18 m/s with heights, positions wandering by metres. */
const drive = (seconds = 1200) => {
  let north_m = 0;
  return Array.from({ length: seconds }, (_, i) => {
    const speed_mps = 13 + 5 * Math.sin(i / 30);
    north_m += speed_mps;
    return {
      time_s: START_s + i,
      north_m,
      east_m: 4 * Math.sin(i / 25),
      speed_mps,
      elevation_m: 100 + 10 * Math.sin(i / 200),
    };
  });
};
const without = (rows: ReturnType<typeof drive>, isLost: (i: number) => boolean) =>
  rows.map((row, i) => (isLost(i) ? { ...row, speed_mps: Number.NaN } : row));

describe("the quality of a log", () => {
  it("is good of a dense drive, told in plain numbers", () => {
    const { verdict, reasons: why } = cleanLog(madeLog(drive())).quality;
    expect({ verdict, why }).toEqual({ verdict: "good", why: ["a fix every 1 s, nothing bridged"] });
  });

  it("says how little of it is driving where the car is parked for most of it", () => {
    const stands = Array.from({ length: 6000 }, (_, i) => ({
      ...drive(600)[599],
      time_s: START_s + 600 + i,
      speed_mps: 0,
    }));
    const log = cleanLog(madeLog([...drive(600), ...stands]));
    expect(log.quality.verdict).toBe("usable");
    expect(reasons(log)).toMatch(/the car drives for (9|10) min( \d+ s)? of 1 h 50 min; the rest it stands/);
  });

  it.each([240, 300])("writes an interval of %d s without a power of ten", (every_s) => {
    const log = cleanLog(madeLog(steadyRows(START_s, 3601, 14).filter((_, i) => i % every_s === 0)));
    expect(reasons(log)).toContain(`a fix only every ${every_s / 60} min: starts`);
    expect(`${reasons(log)} ${log.quality.samplingNote}`).not.toMatch(/\de\+/);
  });
});

it("of a thin log says how many stops are likely, and how many of them are in the road", () => {
  // Twenty minutes of a minute's drive at 15 m/s and a minute's stand, a fix every 30 s: ten drives, nine stops between them.
  let north_m = 0;
  const rows = Array.from({ length: 1200 }, (_, i) => {
    const since_s = i % 120;
    const speed_mps = Math.max(0, Math.min(since_s, 60 - since_s, 15));
    north_m += speed_mps;
    return { time_s: START_s + i, north_m, speed_mps };
  });
  const log = cleanLog(madeLog(rows.filter((_, i) => i % 30 === 0)));
  const words =
    /(\d+) stops on the way are likely, (\d+) to (\d+); (\d+) of them are in the road: one under 30 s may not show/;
  const [, likely, low, high, taken] = (words.exec(reasons(log)) ?? []).map(Number);
  expect(log.stops).toEqual({ taken, likely, band: { low, high } });
  expect(likely).toBeGreaterThan(taken);
});

describe("recorded speeds on part of the fixes", () => {
  it.each([
    ["a third", (i: number) => i % 3 !== 0, 33],
    ["the first half", (i: number) => i > 540, 45],
  ] as const)("are used where they are, and it is said: %s", (_, isLost, percent) => {
    const log = cleanLog(madeLog(without(drive(), isLost)));
    expect(log.quality.speedSource).toBe("partly");
    expect(reasons(log)).toContain(
      `${percent} % of the fixes have a recorded speed: used there, worked out from positions elsewhere`,
    );
  });

  it("make the drive better known where they are than where they are not", () => {
    // Positions scattered by metres, new in every fix: speeds from them are off by tenths of a metre a second.
    const scattered = drive(1080).map((row, i) => ({ ...row, north_m: row.north_m + 6 * Math.sin(i * i) }));
    const { series } = cleanLog(madeLog(without(scattered, (i) => i > 540)));
    const off_mps = (from: number, to: number) => {
      let sum = 0;
      for (let i = from; i < to; i++) sum += (series.speed_mps[i] - scattered[i].speed_mps) ** 2;
      return Math.sqrt(sum / (to - from));
    };
    expect(off_mps(600, 1000)).toBeGreaterThan(2 * off_mps(100, 500));
  });
});

describe("a log without a drive says why, and does not say that the car stands where it moves", () => {
  it("of a move of 40 m", () => {
    const rows = Array.from({ length: 60 }, (_, i) => ({ time_s: START_s + i, speed_mps: i > 5 && i < 20 ? 3 : 0 }));
    const log = cleanLog(madeLog(rows));
    expect(log.isStill).toBe(false);
    expect(log.quality.noDrive).toMatch(/^it moves 4\d(\.\d)? m in all; a drive is 50 m or more$/);
  });

  it("of speeds minutes apart", () => {
    const rows = Array.from({ length: 40 }, (_, i) => ({ time_s: START_s + 300 * i, speed_mps: 14 + (i % 2) }));
    const log = cleanLog(madeLog(rows));
    expect(log.isStill).toBe(false);
    expect(log.quality.noDrive).toBe(
      "its fixes are 5 min apart, and what was driven in 39 gaps between them is not known",
    );
  });
});

it("a log that steps back in time once does so once", () => {
  const rows = steadyRows(START_s, 300, 14).map((row, i) => (i === 100 ? { ...row, time_s: row.time_s - 10.5 } : row));
  const log = cleanLog(madeLog(rows));
  expect(log.repairs.map(({ detail }) => detail).join()).toContain("the log steps back in time once; put in order");
});

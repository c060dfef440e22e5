import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { climbOf } from "../../../../sim/route/clean/heights/cleanHeights.ts";
import { joinLogs } from "../../../../sim/route/joinLogs.ts";
import { writeFar } from "../../../../sim/route/log/writeFar.ts";
import { readLog } from "../../../../sim/route/readLog.ts";
import { writeGpx } from "../../../logs/logWriter.ts";
import { madeLog, steadyRows } from "../../../logs/madeFixes.ts";
import { windingDrive, windingLog } from "../../../logs/windingDrive.ts";

const START_s = 1_741_680_000;
const town = windingDrive("town", 11, 1500);
const rows = windingLog(town, { seed: 11, position_m: 4, speed_mps: 0.15, elevation_m: 3 }, START_s);
const details = (log: ReturnType<typeof cleanLog>) => log.repairs.map(({ detail }) => detail).join("; ");
const reasons = (log: ReturnType<typeof cleanLog>) => log.quality.reasons.join("; ");

describe("a telephone that writes 0 for a height it does not have", () => {
  const spotty = rows.map((row, i) => (i % 900 > 400 ? { ...row, elevation_m: i % 5 === 0 ? 0 : Number.NaN } : row));

  it("has those heights taken as not recorded, and no step of the height", () => {
    const log = cleanLog(readLog("a.gpx", writeGpx(spotty)));
    expect(details(log)).toMatch(/\d+ heights of exactly 0 m, far from all others, taken as not recorded/);
    expect(details(log)).not.toMatch(/stepped/);
    const lowest_m = log.series.elevation_m.reduce((least, elevation_m) => Math.min(least, elevation_m));
    expect(lowest_m).toBeGreaterThan(50);
  });

  it("keeps them where they may be true, by the sea", () => {
    const low = steadyRows(START_s, 600, 15).map((row, i) => ({
      ...row,
      elevation_m: Math.round(4 * Math.sin(i / 60)),
    }));
    const log = cleanLog(madeLog(low));
    expect(details(log)).not.toMatch(/exactly 0 m/);
    expect(climbOf(log.series.elevation_m)).toBeGreaterThan(5);
  });
});

it("a log says of speeds and heights only what it has", () => {
  const layout = (some: typeof rows) => readLog("a.gpx", writeGpx(some)).guess.layout.join("; ");
  expect(layout(rows)).toContain("times in UTC, heights in metres, speed in m/s");
  const bare = rows.map((row) => ({ ...row, speed_mps: Number.NaN, elevation_m: Number.NaN }));
  expect(layout(bare)).toContain("times in UTC, no heights, no recorded speed");
});

it("a receiver that wakes up where it was last jumps, and has no gap of a second", () => {
  const stale = Array.from({ length: 120 }, (_, i) => ({
    ...rows[0],
    time_s: START_s - 120 + i,
    latitude_deg: rows[0].latitude_deg + 0.021,
    speed_mps: 0,
  }));
  const log = cleanLog(readLog("a.gpx", writeGpx([...stale, ...rows])));
  expect(details(log)).toMatch(/the positions jump 23\d0 m at .*: cut there, the jump not counted/);
  expect(details(log)).not.toMatch(/gap of 1 s/);
});

describe("what a car hardly drives", () => {
  it("is said of a walk before the drive", () => {
    const walk = Array.from({ length: 600 }, (_, i) => ({
      ...rows[0],
      time_s: START_s - 600 + i,
      latitude_deg: rows[0].latitude_deg - ((600 - i) * 1.35) / 111_200,
      speed_mps: 1.35 + 0.3 * Math.sin(i * 1.9),
    }));
    const log = cleanLog(readLog("a.gpx", writeGpx([...walk, ...rows])));
    expect(reasons(log)).toMatch(/about \d+ min.* at a walking pace from .*carried on foot/);
  });

  it("is said of a ferry", () => {
    const sea = madeLog(steadyRows(START_s, 1200, 6.5).map((row) => ({ ...row, speed_mps: 6.5 })));
    expect(reasons(cleanLog(sea))).toMatch(/at a steady 23 km\/h from .*a ferry or a train/);
  });

  it.each(["town", "hills"] as const)("is not said of a drive through %s, nor of a motorway", (country) => {
    const drive = windingLog(windingDrive(country, 3), { seed: 3, position_m: 4, speed_mps: 0.15, elevation_m: 3 });
    expect(reasons(cleanLog(readLog("a.gpx", writeGpx(drive))))).not.toMatch(/no drive/);
    const motorway = madeLog(steadyRows(START_s, 1200, 31).map((row) => ({ ...row, speed_mps: 31 })));
    expect(reasons(cleanLog(motorway))).not.toMatch(/no drive/);
  });

  it("is not said of a jam that stops and goes at a walking pace", () => {
    const speeds = Array.from({ length: 900 }, (_, i) => Math.max(0, 1.4 + 1.6 * Math.sin(i / 7)));
    let north_m = 0;
    const jam = speeds.map((speed_mps, i) => {
      north_m += speed_mps;
      return { time_s: START_s + i, north_m, speed_mps };
    });
    expect(reasons(cleanLog(madeLog(jam)))).not.toMatch(/no drive/);
  });
});

it.each([
  [6.4, "6.4 m"],
  [2677, "2680 m"],
  [12_345, "12.3 km"],
  [5_280_400, "5280 km"],
])("%d m is written as %s", (distance_m, words) => {
  expect(writeFar(distance_m)).toBe(words);
});

it("a copy of a log gives way as one that has as many fixes, not fewer", () => {
  const [first, copy] = ["a.gpx", "copy.gpx"].map((name) => readLog(name, writeGpx(rows)));
  const { problems } = joinLogs([first, copy]);
  expect(problems.map(({ message }) => message).join()).toContain("which has as many fixes there");
});

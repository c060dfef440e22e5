import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { type CleanedLog, Mended, type RepairKind } from "../../../../sim/route/clean/report/cleanedLog.ts";
import { CancelledError } from "../../../../sim/route/log/steps.ts";
import { makeLog, makeTruth } from "../../../logs/logMaker.ts";
import { madeLog, steadyRows } from "../../../logs/madeFixes.ts";

const START_s = Date.UTC(2024, 4, 3, 8, 0, 0) / 1000;
const repair = (log: CleanedLog, kind: RepairKind) => log.repairs.find((one) => one.kind === kind);
const length_m = (log: CleanedLog) => log.series.distance_m[log.series.count - 1];

describe("cleaning", () => {
  it("of a steady drive without noise gives it back", () => {
    const log = cleanLog(madeLog(steadyRows(START_s, 300, 15)));
    // 299 s at 15 m/s; the smoother's start and end are soft by some metres.
    expect(length_m(log) / (299 * 15)).toBeCloseTo(1, 2);
    expect(log.series.speed_mps[150]).toBeCloseTo(15, 1);
    expect(log.quality.verdict).toBe("usable"); // it has no heights
    expect(log.isStill).toBe(false);
  });

  it("drops a wild fix and says how far off and when", () => {
    const rows = steadyRows(START_s, 300, 15);
    rows[125] = { ...rows[125], north_m: rows[125].north_m + 410 };
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "wildFix")).toMatchObject({ count: 1 });
    expect(repair(log, "wildFix")?.detail).toMatch(/^1 fix 4\d\d m off dropped at 08:02:05$/);
    expect(length_m(log) / (299 * 15)).toBeCloseTo(1, 2);
  });

  it("drops positions at 0,0", () => {
    const rows = steadyRows(START_s, 300, 15).map((row, i) =>
      i < 3 ? { time_s: row.time_s, latitude_deg: 0, longitude_deg: 0 } : row,
    );
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "zeroFix")).toMatchObject({ count: 3 });
    expect(length_m(log) / (296 * 15)).toBeGreaterThan(0.98);
    expect(length_m(log) / (299 * 15)).toBeLessThan(1.02);
  });

  it("puts a sideways step back and says how wide and how long", () => {
    const rows = steadyRows(START_s, 400, 15).map((row, i) => ({ ...row, east_m: i >= 200 && i < 212 ? 30 : 0 }));
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "multipath")?.detail).toBe("positions 30 m to one side for 12 s put back at 08:03:20");
    expect(log.series.flags[205] & Mended.multipath).not.toBe(0);
    expect(log.series.flags[150] & Mended.multipath).toBe(0);
    expect(length_m(log) / (399 * 15)).toBeCloseTo(1, 2);
  });

  it("bridges a tunnel with its distance", () => {
    const rows = steadyRows(START_s, 400, 15).filter((_, i) => i < 200 || i >= 231);
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "tunnel")).toMatchObject({ count: 1 });
    expect(repair(log, "tunnel")?.detail).toMatch(/^a gap of 32 s at 08:03:19 bridged as a tunnel, 480 m$/);
    expect(length_m(log) / (399 * 15)).toBeCloseTo(1, 2);
    expect(log.series.flags[215] & Mended.bridged).not.toBe(0);
    // How it was driven inside nobody saw: a drive as others are, not a stop.
    expect(log.series.speed_mps[215]).toBeGreaterThan(10);
    expect(log.series.speed_mps[215]).toBeLessThan(20);
  });

  it("fills a parking without fixes with standing", () => {
    const rows = [...steadyRows(START_s, 200, 15), ...steadyRows(START_s + 1400, 200, 15, 200 * 15 + 20)];
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "parked")?.detail).toMatch(/^parked 20 min 1 s without a log at 08:03:19$/);
    expect(log.series.speed_mps[800]).toBe(0);
    expect(length_m(log) / (398 * 15)).toBeCloseTo(1, 1);
  });

  it("cuts the log at a long parking and counts no distance for it", () => {
    const rows = [...steadyRows(START_s, 200, 15), ...steadyRows(START_s + 40_000, 200, 15, 200 * 15 + 60)];
    const log = cleanLog(madeLog(rows));
    expect(log.gaps).toMatchObject([{ kind: "parked", row: 200 }]);
    expect(log.series.breaks).toEqual([200]);
    expect(length_m(log) / (398 * 15)).toBeCloseTo(1, 2);
  });

  it("makes up no drive for kilometres that were not logged", () => {
    const rows = [...steadyRows(START_s, 200, 15), ...steadyRows(START_s + 2000, 200, 15, 20_000)];
    const log = cleanLog(madeLog(rows));
    expect(log.gaps).toMatchObject([{ kind: "signalLoss" }]);
    expect(repair(log, "signalLoss")?.detail).toMatch(/cut out, 17 km, not counted/);
    expect(length_m(log) / (398 * 15)).toBeCloseTo(1, 2);
  });

  it("puts rows in order and drops repeats", () => {
    const rows = steadyRows(START_s, 200, 15);
    const mixed = [...rows.slice(0, 50), ...rows.slice(60, 100), ...rows.slice(50, 60), ...rows.slice(90)];
    const log = cleanLog(madeLog(mixed));
    expect(repair(log, "backwardTime")?.count).toBeGreaterThan(0);
    expect(repair(log, "duplicate")).toMatchObject({ count: 10 });
    expect(length_m(log) / (199 * 15)).toBeCloseTo(1, 2);
  });

  it("undoes a clock that was put back, where times have no zone", () => {
    const at_s = Date.UTC(2024, 9, 27, 2, 50, 0) / 1000;
    const rows = steadyRows(at_s, 1200, 15).map((row, i) => ({ ...row, time_s: row.time_s - (i >= 600 ? 3600 : 0) }));
    const log = cleanLog(madeLog(rows, false));
    expect(repair(log, "clockChange")).toMatchObject({ count: 1 });
    expect(length_m(log) / (1199 * 15)).toBeCloseTo(1, 2);
  });

  it("goes over the date line without driving round the world", () => {
    const rows = Array.from({ length: 200 }, (_, i) => {
      const longitude_deg = 179.99 + i * 0.0002;
      return {
        time_s: START_s + i,
        latitude_deg: 0,
        longitude_deg: longitude_deg > 180 ? longitude_deg - 360 : longitude_deg,
      };
    });
    const log = cleanLog(madeLog(rows));
    // 0.0002 degrees of the equator are 22.2639 m: 111 319.491 m a degree.
    expect(length_m(log) / (199 * 22.2639)).toBeCloseTo(1, 2);
  });

  it("works from speeds alone", () => {
    const rows = Array.from({ length: 300 }, (_, i) => ({
      time_s: START_s + i,
      speed_mps: i < 10 || i > 289 ? 0 : 12,
    }));
    const log = cleanLog(madeLog(rows));
    expect(log.track).toBeUndefined();
    expect(log.quality.speedSource).toBe("recorded");
    expect(length_m(log) / (280 * 12)).toBeCloseTo(1, 1);
  });

  it("calls a log without movement so", () => {
    const rows = Array.from({ length: 600 }, (_, i) => ({
      time_s: START_s + i,
      north_m: 2 * Math.sin(i / 9),
      east_m: 2 * Math.cos(i / 13),
    }));
    const log = cleanLog(madeLog(rows));
    expect(log.isStill).toBe(true);
    expect(log.quality.reasons).toContain("the log goes nowhere");
  });

  it.each([3, 8])("holds a parked receiver that wanders by %f m still", (position_m) => {
    const truth = makeTruth(new Array(3600).fill(0), 1);
    const spoiling = { seed: 1, sampling_s: 1, position_m, white_m: 0.5, hasMultipath: true, hasDropouts: true };
    const log = cleanLog(madeLog(makeLog(truth, spoiling)));
    // Unmended it would drive kilometres in this hour.
    expect(length_m(log)).toBeLessThan(50);
    expect(log.isStill).toBe(true);
  });

  it.each([0.2, 2, 6, 30])("resamples a log of %f s to one row a second", (interval_s) => {
    const rows = Array.from({ length: Math.floor(600 / interval_s) + 1 }, (_, i) => ({
      time_s: START_s + i * interval_s,
      north_m: i * interval_s * 15,
    }));
    const log = cleanLog(madeLog(rows));
    expect(log.series.count).toBe(601);
    expect(log.series.time_s[600] - log.series.time_s[0]).toBe(600);
    expect(length_m(log) / 9000).toBeCloseTo(1, 1);
    expect(log.quality.samplingNote === undefined).toBe(interval_s < 3);
  });

  it("says what positions without speeds do to the energy, and that of no log with speeds", () => {
    const rows = Array.from({ length: 601 }, (_, i) => ({ time_s: START_s + i, north_m: i * 15 }));
    const fromPositions = cleanLog(madeLog(rows)).quality.reasons.join();
    expect(fromPositions).toContain("worked out from positions");
    expect(fromPositions).toMatch(/\d+ stops? on the way/);
    const withSpeeds = cleanLog(madeLog(rows.map((row) => ({ ...row, speed_mps: 15 }))));
    expect(withSpeeds.quality.reasons.join()).not.toMatch(/worked out from positions|on the way/);
  });

  it("leaves a repair undone where it is turned off", () => {
    const tunnel = madeLog(steadyRows(START_s, 400, 15).filter((_, i) => i < 200 || i >= 231));
    const cut = cleanLog(tunnel, { off: ["tunnel"] });
    expect(cut.series.breaks.length).toBe(1);
    expect(length_m(cut) / (368 * 15)).toBeCloseTo(1, 1);
    const wild = steadyRows(START_s, 300, 15);
    wild[125] = { ...wild[125], north_m: wild[125].north_m + 410 };
    expect(repair(cleanLog(madeLog(wild), { off: ["wildFix", "multipath"] }), "wildFix")).toBeUndefined();
  });

  it("corrects a dashboard that reads high against the positions, and says by how much", () => {
    const rows = steadyRows(START_s, 900, 15).map((row) => ({ ...row, speed_mps: 16.2 }));
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "speedScale")?.detail).toMatch(/reads 8.0 % high/);
    expect(length_m(log) / (899 * 15)).toBeCloseTo(1, 2);
  });

  it("leaves recorded speeds out that stand at zero while the car drives", () => {
    const log = cleanLog(madeLog(steadyRows(START_s, 600, 15).map((row) => ({ ...row, speed_mps: 0 }))));
    expect(log.quality.speedSource).toBe("positions");
    expect(repair(log, "speedScale")?.detail).toMatch(/nothing to do with the positions/);
    expect(length_m(log) / (599 * 15)).toBeCloseTo(1, 2);
  });

  it("never goes below zero nor beyond what a car can do", () => {
    const rows = steadyRows(START_s, 200, 15).map((row, i) => ({ ...row, speed_mps: i % 20 === 7 ? 45 : 15 }));
    const { series } = cleanLog(madeLog(rows));
    for (let i = 1; i < series.count; i++) {
      expect(series.speed_mps[i]).toBeGreaterThanOrEqual(0);
      expect(series.speed_mps[i] - series.speed_mps[i - 1]).toBeLessThanOrEqual(5 + 1e-9);
      expect(series.speed_mps[i - 1] - series.speed_mps[i]).toBeLessThanOrEqual(9 + 1e-9);
    }
  });

  it("takes a step of the height out, and lets no slope be steeper than one in three", () => {
    const rows = steadyRows(START_s, 400, 15).map((row, i) => ({ ...row, elevation_m: i < 200 ? 100 : 148 }));
    const log = cleanLog(madeLog(rows));
    expect(repair(log, "heightStep")?.detail).toMatch(/^height stepped up 48 m at 08:03:20; taken out$/);
    const { elevation_m, distance_m } = log.series;
    expect(elevation_m[399] - elevation_m[0]).toBeCloseTo(0, 0);
    for (let i = 1; i < log.series.count; i++) {
      expect(Math.abs(elevation_m[i] - elevation_m[i - 1])).toBeLessThanOrEqual(
        0.33 * (distance_m[i] - distance_m[i - 1]) + 1e-9,
      );
    }
  });

  it("stops when asked to, and refuses what has no times", () => {
    const log = madeLog(steadyRows(START_s, 300, 15));
    expect(() => cleanLog(log, {}, undefined, () => true)).toThrow(CancelledError);
    const timeless = { ...log, fixes: { ...log.fixes, time_s: log.fixes.time_s.map(() => Number.NaN) } };
    expect(() => cleanLog(timeless)).toThrow(InputError);
  });
});

import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../sim/route/clean/cleanLog.ts";
import { joinLogs } from "../../../sim/route/joinLogs.ts";
import { readLog } from "../../../sim/route/readLog.ts";
import { makeLog, makeTruth, openSky } from "../../logs/logMaker.ts";
import { writeCsv, writeGpx } from "../../logs/logWriter.ts";

const truth = makeTruth(new Array(400).fill(15), 1);
const rows = makeLog(truth, { ...openSky, seed: 2, elevation_m: undefined });
const gpx = (name: string, from: number, to: number) => readLog(name, writeGpx(rows.slice(from, to)));

describe("several logs", () => {
  it("are joined in order of time, whatever order they come in", () => {
    const joined = joinLogs([gpx("b.gpx", 200, 400), gpx("a.gpx", 0, 200)]);
    expect(joined.file).toBe("a.gpx + b.gpx");
    expect(joined.fixes.count).toBe(400);
    expect([...joined.fixes.time_s]).toEqual([...joined.fixes.time_s].sort((a, b) => a - b));
    expect(joined.problems).toEqual([]);
  });

  it("of the same minutes count once, and it is said which gave way", () => {
    const table = readLog("b.csv", writeCsv(rows.filter((_, i) => i >= 100 && i % 5 === 0)));
    const joined = joinLogs([table, gpx("a.gpx", 0, 300)]);
    expect(joined.problems).toMatchObject([{ code: "sameMinutes", where: "b.csv" }]);
    const length_m = cleanLog(joined).series.distance_m;
    // 395 s at 15 m/s: the table's last row.
    expect(length_m[length_m.length - 1] / (395 * 15)).toBeCloseTo(1, 2);
  });

  it("given twice count once", () => {
    const joined = joinLogs([gpx("a.gpx", 0, 400), gpx("a-copy.gpx", 0, 400)]);
    expect(joined.fixes.count).toBe(400);
    expect(joined.problems).toMatchObject([{ code: "sameMinutes", where: "a-copy.gpx" }]);
  });

  it("without a date cannot be put in order", () => {
    const elapsed = readLog("e.csv", new TextEncoder().encode("time_s,speed_kmh\n0,36\n1,36\n2,36\n3,36\n"));
    expect(() => joinLogs([elapsed, gpx("a.gpx", 0, 100)])).toThrow(/date/);
  });
});

import { describe, expect, it } from "vitest";
import { writeCsv, writeGpx, writeNmea } from "../../../logs/logWriter.ts";
import { runCommand } from "../../../support/runCommand.ts";
import {
  beginning,
  beginning_km,
  clock,
  dayLater,
  drive_km,
  found,
  logFiles,
  refused,
  rows,
  table,
} from "../commands/loggedWeek.ts";

describe("several logs", () => {
  it("of one week are joined in order of time, whatever order they are named in", async () => {
    const paths = logFiles({
      "b.gpx": writeGpx(dayLater(1)),
      "a.csv": writeCsv(rows),
      "c.nmea": writeNmea(dayLater(2)),
    });
    const { files, trips, total, days, daysDriven_km } = await found(...paths);
    expect(files.map(({ file }) => file)).toEqual(paths);
    const starts = trips.map(({ start }) => Date.parse(start ?? ""));
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    expect(trips).toHaveLength(6);
    expect(total.distance_km / (3 * drive_km)).toBeCloseTo(1, 2);
    expect(days).toMatchObject(["03", "04", "05"].map((day) => ({ date: `2024-05-${day}`, trips: 2 })));
    expect(daysDriven_km).toEqual(days.map(({ distance_km }) => Math.round(10 * distance_km) / 10));
  });

  it("of the same minutes count once, and it is said which gave way", async () => {
    const paths = logFiles({
      "a.gpx": writeGpx(beginning),
      "b.csv": writeCsv(beginning.filter((_, i) => i % 3 === 0)),
    });
    const { files, total } = await found(...paths);
    expect(total.distance_km / beginning_km).toBeCloseTo(1, 2);
    expect(files[0].repairs.map(({ kind }) => kind)).not.toContain("sameMinutes");
    expect(files[1].repairs).toContainEqual({
      kind: "sameMinutes",
      count: 1,
      detail: expect.stringContaining("in a.gpx, which has more fixes there"),
    });
    expect((await runCommand("trace", ...paths)).out).toMatch(/left out {3}found the same \d+ min/);
  });

  it("stand in one object with strict traces and cycles", async () => {
    const paths = logFiles({ "lane.csv": "time_s,speed_mps\n0,0\n10,10\n20,0\n", "day.gpx": writeGpx(beginning) });
    const { files, trips, total } = await found("udds", ...paths);
    expect(files.map(({ format }) => format)).toEqual(["cycle", "trace", "gpx"]);
    expect(trips.slice(0, 2)).toMatchObject([{ id: "udds" }, { id: "lane", distance_km: 0.1, start: null }]);
    const sum_km = trips.reduce((sum, trip) => sum + trip.distance_km, 0);
    expect(total.distance_km).toBeCloseTo(sum_km, 9);
  });

  it("with and without a zone are put in order as written, with a word of warning", async () => {
    const local = table("time,speed (km/h)", (s) => `2024-05-04 ${clock(s)},30`);
    const paths = logFiles({ "a.gpx": writeGpx(beginning), "b.csv": local });
    const { code, err } = await runCommand("trace", ...paths);
    expect({ code, err }).toEqual({ code: 0, err: expect.stringMatching(/^b\.csv: its clock has no zone [^\n]*$/) });
    expect((await runCommand("trace", paths[1])).err).toBe("");
  });

  it("that are one file are refused", async () => {
    const [path] = logFiles({ "a.gpx": writeGpx(rows.slice(0, 50)) });
    expect(await refused(path, path)).toContain("found this log twice");
  });
});

describe("trace --moved", () => {
  it("says beside each repair what it moved, for people and for programs", async () => {
    const [file] = logFiles({ "made.gpx": writeGpx(rows.slice(0, 400)) });
    const { out } = await runCommand("trace", file, "--moved");
    expect(out).toMatch(/mended {5}.*\n(?: {13}.*\n)* {4}moved {4}(distance|energy at the wheel|climb|hardly) /);
    const { files } = await found(file, "--moved");
    const smoothed = files[0].repairs.find(({ kind }) => kind === "heightNoise");
    expect(smoothed?.moved?.climb_m).toBeLessThan(0);
    expect((await found(file)).files[0].repairs.every(({ moved }) => moved === undefined)).toBe(true);
  });

  it("is said to be of no use without a log", async () => {
    const { err } = await runCommand("trace", "udds", "--moved");
    expect(err).toContain("--moved: no file is a recorded log, it is not used");
  });
});

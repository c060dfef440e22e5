import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { LogRow } from "../../../logs/logMaker.ts";
import { writeCsv, writeGpx, writeNmea } from "../../../logs/logWriter.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { bare, bareAt, drive_km, found, logFiles, refused, rows, start_s, table } from "../commands/loggedWeek.ts";

describe("a log", () => {
  // 1 % is what the cleaning is to reach at one fix a second.
  it.each([
    ["gpx", writeGpx],
    ["nmea", writeNmea],
    ["csv", (all: readonly LogRow[]) => writeCsv(all)],
  ] as const)("as %s is found by its content, and its trips come out", async (format, write) => {
    const [path] = logFiles({ "holiday.jpg": write(rows) });
    const { files, trips, total } = await found(path);
    expect(files).toHaveLength(1);
    expect(files[0]).toMatchObject({ file: path, format, fixes: rows.length, badLines: 0 });
    // Some 5 % of this drive is bridged, which is where a good log ends and a usable one begins.
    expect(files[0].quality).toMatch(/^(good|usable)$/);
    expect(files[0].repairs.map(({ kind }) => kind)).toContain("heightNoise");
    for (const { count, detail } of files[0].repairs) {
      expect(count).toBeGreaterThan(0);
      expect(detail).toMatch(/[a-z]{3}/);
    }
    expect(trips).toHaveLength(2); // parted by the 5 minutes parked
    expect(total.distance_km / drive_km).toBeGreaterThan(0.99);
    expect(total.distance_km / drive_km).toBeLessThan(1.01);
    expect(trips.reduce((sum, trip) => sum + trip.distance_km, 0)).toBeCloseTo(total.distance_km, 9);
    expect(Math.abs(Date.parse(trips[0].start ?? "") / 1000 - start_s)).toBeLessThan(60);
    expect(total.moving_s).toBeLessThan(trips.reduce((sum, trip) => sum + trip.duration_s, 0));
    expect(total.climb_m).toBeGreaterThan(0);
  });

  it("is told to a person: what was mended, the verdict, trips, days, the likest cycle, the total", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const { code, out, err } = await runCommand("trace", path);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^monday\.gpx: GPX, \d+ fixes$/m);
    expect(out).toMatch(/^ {2}quality {4}(good|usable): /m);
    expect(out).toMatch(/^ {2}mended {5}a gap of \d+ s at \d\d:\d\d:\d\d /m);
    expect(out).toMatch(/^2024-05-03 09:00 .* udds:transient: /m);
    expect(out).toMatch(/^all of them +1[12](\.\d)? /m);
    expect(out).toMatch(/^2024-05-03 +2 .* 5 min \d+ s, place 1$/m);
    expect(out).toContain("UTC+1, guessed from the longitude");
  });

  it("says nowhere where the car was", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const json = (await runCommand("trace", path, "--json")).out;
    const report = (await runCommand("trace", path)).out;
    for (const text of [json, report]) expect(text).not.toMatch(/52\.[01]\d\d|\b8\.[34]\d\d|"(lat|lon)_deg"/);
  });

  it("without movement is called so", async () => {
    // A receiver's wander of metres about one place.
    const points = Array.from({ length: 200 }, (_, i) =>
      bareAt(50 + 2e-5 * Math.sin(i / 7), 8.5 + 2e-5 * Math.cos(i / 11), i),
    );
    const [path] = logFiles({ "parked.gpx": bare(points.join("")) });
    const { files, trips, total } = await found(path);
    expect(files[0].isStill).toBe(true);
    expect(trips).toEqual([]);
    expect(total.distance_km).toBeLessThan(0.05);
    expect((await runCommand("trace", path)).out).toContain("The car does not move in this log");
    expect(await refused(path, "--out", join(emptyFolder(), "out.csv"))).toContain("found a log without movement");
  });

  it("of speeds alone, counted from its start, has trips without a date", async () => {
    const [path] = logFiles({ "reader.csv": table("time (s),speed (km/h)", (s) => `${s},${s % 2 ? 36 : 36.5}`) });
    const { trips } = await found(path);
    expect(trips).toMatchObject([{ start: null, climb_m: null }]);
    expect(trips[0].distance_km).toBeCloseTo((299 * 36.25) / 3600, 2);
  });
});

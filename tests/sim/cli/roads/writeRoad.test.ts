import { readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeCsv, writeGpx } from "../../../logs/logWriter.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { quick } from "../commands/drivenTuner.ts";
import { beginning, found, logFiles, refused, rows, truth } from "../commands/loggedWeek.ts";

describe("--out", () => {
  it("writes all trips as a strict trace without positions, which drives the same", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const out = join(emptyFolder(), "road.csv");
    const { err } = await runCommand("trace", path, "--out", out);
    expect(err).toBe(`written: ${out}, without positions`);
    const lines = readFileSync(out, "utf8").trimEnd().split("\n");
    expect(lines[0]).toBe("time_s,speed_kmh,elevation_m");
    const log = await found(path);
    const trace = await found(out);
    expect(trace.files[0]).toMatchObject({ format: "trace", fixes: lines.length - 1, repairs: [] });
    // Where two trips meet, both at rest, one second of rest is put between them and nothing is driven.
    expect(trace.total.distance_km).toBeCloseTo(log.total.distance_km, 6);
    const driven = async (road: string) => {
      const { code, out: json } = await runCommand("drive", quick(), "--trace", road, "--json");
      expect(code).toBe(0);
      return JSON.parse(json) as { trace: { distance_km: number }; candidates: { battery_Whpkm: number }[] };
    };
    const [ofLog, ofTrace] = [await driven(path), await driven(out)];
    expect(ofLog.trace.distance_km).toBeCloseTo(log.total.distance_km, 6);
    expect(ofLog.candidates.length).toBeGreaterThan(0);
    // Heights between rows are not written: what is left is the rounding of a profile at 10 m to one at each second.
    ofLog.candidates.forEach(({ battery_Whpkm }, k) => {
      expect(ofTrace.candidates[k].battery_Whpkm / battery_Whpkm).toBeCloseTo(1, 2);
    });
  });

  it("keeps positions only when asked, in a file beside it with the same times", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(beginning) });
    const folder = emptyFolder();
    const { code, err } = await runCommand("trace", path, "--out", join(folder, "road.csv"), "--keep-positions");
    expect({ code, err }).toMatchObject({ code: 0, err: expect.stringContaining("road.positions.csv") });
    const times = (name: string) =>
      readFileSync(join(folder, name), "utf8")
        .trimEnd()
        .split("\n")
        .map((line) => line.split(",", 1)[0]);
    expect(times("road.positions.csv")).toEqual(times("road.csv"));
    const first = readFileSync(join(folder, "road.positions.csv"), "utf8").split("\n")[1].split(",").map(Number);
    expect(first[0]).toBe(0);
    // Within three standard deviations of where the drive begins: 9 m are 1e-4 degrees, and half as much again of longitude.
    expect(Math.abs(first[1] - truth.latitude_deg[0])).toBeLessThan(1e-4);
    expect(Math.abs(first[2] - truth.longitude_deg[0])).toBeLessThan(1.5e-4);
    expect(await refused(path, "--keep-positions")).toContain("found no --out FILE.csv");
    expect(await refused("udds", "--out", join(folder, "x.csv"), "--keep-positions")).toContain("found no positions");
  });

  it("replaces a file only with --force, and follows no link even then", async () => {
    const out = join(emptyFolder(), "road.csv");
    writeFileSync(out, "mine");
    expect(await refused("udds", "--out", out)).toContain("found a file of this name already; --force replaces it");
    expect(readFileSync(out, "utf8")).toBe("mine");
    expect((await runCommand("trace", "udds", "--out", out, "--force")).code).toBe(0);
    expect(readFileSync(out, "utf8")).toMatch(/^time_s,speed_kmh/);
    const link = join(emptyFolder(), "link.csv");
    symlinkSync(out, link);
    expect(await refused("udds", "--out", link, "--force")).toContain("found a link");
    const [path] = logFiles({ "monday.gpx": writeGpx(beginning) });
    const beside = out.replace(".csv", ".positions.csv");
    writeFileSync(beside, "mine");
    expect(await refused(path, "--out", out, "--keep-positions")).toContain("--force replaces it");
    expect(readFileSync(beside, "utf8")).toBe("mine");
  });

  it("never writes over a log that is read", async () => {
    const [path, beside] = logFiles({ "a.csv": writeCsv(beginning), "b.positions.csv": writeCsv(rows.slice(-700)) });
    const before = readFileSync(path, "utf8");
    expect(await refused(path, "--out", path)).toContain("found the file that is read");
    const out = beside.replace(".positions", "");
    expect(await refused(path, beside, "--out", out, "--keep-positions")).toContain("found the file that is read");
    expect(readFileSync(path, "utf8")).toBe(before);
  });
});

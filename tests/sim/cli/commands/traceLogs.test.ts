import { readFileSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { amongHouses, type LogRow, makeLog, makeTruth, withParking } from "../../../logs/logMaker.ts";
import { writeCsv, writeGpx, writeNmea } from "../../../logs/logWriter.ts";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

const S_PER_DAY = 86_400;
const start_s = Date.UTC(2024, 4, 3, 8) / 1000;
const truth = makeTruth(withParking(cycleSpeeds_mps("udds"), 300), 1, (along_m) => 50 + 20 * Math.sin(along_m / 800));
const drive_km = truth.distance_m[truth.distance_m.length - 1] / 1000;
const rows = makeLog(truth, { ...amongHouses, seed: 2 }, start_s);
const dayLater = (days: number) => rows.map((row) => ({ ...row, time_s: row.time_s + days * S_PER_DAY }));

interface Found {
  files: {
    file: string;
    format: string;
    fixes: number;
    badLines: number;
    repairs: { kind: string; count: number; detail: string; moved?: { climb_m: number } }[];
    quality: string;
    isStill: boolean;
    decided: { name: string; answer: string; evidence: string }[];
    readAs: { encoding: string };
  }[];
  trips: { start: string | null; duration_s: number; distance_km: number; climb_m: number | null; stops: number }[];
  total: { distance_km: number; moving_s: number; climb_m: number | null };
  days: { date: string; trips: number; distance_km: number }[];
  daysDriven_km: number[];
}

/** Files of the names and contents given, in a folder of the test's own. */
function logFiles(contents: Readonly<Record<string, string | Uint8Array>>): string[] {
  const folder = emptyFolder();
  return Object.entries(contents).map(([name, content]) => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  });
}

async function found(...words: readonly string[]): Promise<Found> {
  const { code, out, err } = await runCommand("trace", ...words, "--json");
  expect({ code, err }).toMatchObject({ code: 0, err: expect.not.stringContaining("fault of this program") });
  return JSON.parse(out) as Found;
}

async function refused(...words: readonly string[]): Promise<string> {
  const { code, out, err } = await runCommand("trace", ...words);
  expect({ code, out }).toEqual({ code: 2, out: "" });
  return err;
}

/** A table of a minute or more: the header, and a row a second. */
function table(header: string, row: (second: number) => string, seconds = 300): string {
  return `${header}\n${Array.from({ length: seconds }, (_, second) => row(second)).join("\n")}\n`;
}
const clock = (second: number) => new Date((start_s + second) * 1000).toISOString().slice(11, 19);
const bare = (points: string) => `<gpx version="1.1"><trk><trkseg>${points}</trkseg></trk></gpx>`;
const bareAt = (lat_deg: number, lon_deg: number, second?: number) =>
  `<trkpt lat="${lat_deg}" lon="${lon_deg}">${
    second === undefined ? "" : `<time>${new Date((start_s + second) * 1000).toISOString()}</time>`
  }</trkpt>`;

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
    const paths = logFiles({ "a.gpx": writeGpx(rows), "b.csv": writeCsv(rows.filter((_, i) => i % 3 === 0)) });
    const { files, total } = await found(...paths);
    expect(total.distance_km / drive_km).toBeCloseTo(1, 2);
    expect(files[0].repairs.map(({ kind }) => kind)).not.toContain("sameMinutes");
    expect(files[1].repairs).toContainEqual({
      kind: "sameMinutes",
      count: 1,
      detail: expect.stringContaining("in a.gpx, which has more fixes there"),
    });
    expect((await runCommand("trace", ...paths)).out).toMatch(/left out {3}found the same \d+ min/);
  });

  it("stand in one object with strict traces and cycles", async () => {
    const paths = logFiles({ "lane.csv": "time_s,speed_mps\n0,0\n10,10\n20,0\n", "day.gpx": writeGpx(rows) });
    const { files, trips, total } = await found("udds", ...paths);
    expect(files.map(({ format }) => format)).toEqual(["cycle", "trace", "gpx"]);
    expect(trips.slice(0, 2)).toMatchObject([{ id: "udds" }, { id: "lane", distance_km: 0.1, start: null }]);
    const sum_km = trips.reduce((sum, trip) => sum + trip.distance_km, 0);
    expect(total.distance_km).toBeCloseTo(sum_km, 9);
  });

  it("with and without a zone are put in order as written, with a word of warning", async () => {
    const local = table("time,speed (km/h)", (s) => `2024-05-04 ${clock(s)},30`);
    const paths = logFiles({ "a.gpx": writeGpx(rows), "b.csv": local });
    const { code, err } = await runCommand("trace", ...paths);
    expect({ code, err }).toEqual({ code: 0, err: expect.stringMatching(/^b\.csv: its clock has no zone [^\n]*$/) });
    expect((await runCommand("trace", paths[1])).err).toBe("");
  });

  it("that are one file are refused", async () => {
    const [path] = logFiles({ "a.gpx": writeGpx(rows.slice(0, 50)) });
    expect(await refused(path, path)).toContain("found this log twice");
  });
});

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
      const { code, out: json } = await runCommand("drive", changedDemoFile(), "--trace", road, "--json");
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
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
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
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const beside = out.replace(".csv", ".positions.csv");
    writeFileSync(beside, "mine");
    expect(await refused(path, "--out", out, "--keep-positions")).toContain("--force replaces it");
    expect(readFileSync(beside, "utf8")).toBe("mine");
  });

  it("never writes over a log that is read", async () => {
    const [path, beside] = logFiles({ "a.csv": writeCsv(rows), "b.positions.csv": writeCsv(dayLater(1)) });
    const before = readFileSync(path, "utf8");
    expect(await refused(path, "--out", path)).toContain("found the file that is read");
    const out = beside.replace(".positions", "");
    expect(await refused(path, beside, "--out", out, "--keep-positions")).toContain("found the file that is read");
    expect(readFileSync(path, "utf8")).toBe(before);
  });
});

describe("what a log leaves open", () => {
  const openTables: readonly (readonly [string, string, readonly string[]])[] = [
    ["--speed-unit kmh|mph|mps|knots", table("time,speed", (s) => `${s},${20 + (s % 5)}`), ["--speed-unit", "mph"]],
    [
      "--hemisphere NE|NW|SE|SW",
      table("time,lat,lon", (s) => `2024-05-03T${clock(s)}Z,${(5000 + s * 0.01).toFixed(4)},00830.0000`),
      ["--hemisphere", "SW"],
    ],
    ["--interval S", table("speed_kmh", (s) => String(20 + (s % 5))), ["--interval", "0.5"]],
    ["--date YYYY-MM-DD", table("time,speed (km/h)", (s) => `${clock(s)},30`), ["--date", "2024-05-03"]],
    [
      "--date YYYY-MM-DD",
      table("date,time,speed (km/h)", (s) => `03/05/2024,${clock(s)},30`),
      ["--date", "2024-03-05"],
    ],
  ];
  it.each(openTables)("is asked for by %s, and the answer taken", async (option, content, answer) => {
    const [path] = logFiles({ "reader.csv": content });
    expect(await refused(path)).toContain(`is wanted: ${option}`);
    const { files } = await found(path, ...answer);
    expect(files[0].decided).toContainEqual(expect.objectContaining({ answer: answer[1], evidence: "given" }));
  });

  it("decides what its dates mean by the day given, or refuses a day that they cannot mean", async () => {
    const [path] = logFiles({ "r.csv": table("date,time,speed (km/h)", (s) => `03/05/2024,${clock(s)},30`) });
    expect((await found(path, "--date", "2024-03-05")).trips[0].start).toMatch(/^2024-03-05T08:00/);
    expect((await found(path, "--date", "2024-05-03")).trips[0].start).toMatch(/^2024-05-03T08:00/);
    expect(await refused(path, "--date", "2024-07-03")).toContain("is written 03/05/2024");
  });

  it("takes the day of the first row for rows without times too", async () => {
    const [path] = logFiles({ "r.csv": table("speed_kmh", () => "30") });
    const { trips } = await found(path, "--interval", "1", "--date", "2024-05-03");
    expect(trips[0].start).toMatch(/^2024-05-03T00:00/);
  });

  it("is not one day for several logs", async () => {
    const content = table("time,speed (km/h)", (s) => `${clock(s)},30`);
    const paths = logFiles({ "a.csv": content, "b.csv": content });
    expect(await refused(...paths, "--date", "2024-05-03")).toContain(
      "found 2 logs without a date, it answers for one",
    );
  });

  it("is found from evidence where there is some, which is said", async () => {
    const content = table(
      "time,lat,lon,speed",
      (s) => `2024-05-03T${clock(s)}Z,${(50 + (s * 20) / 111_229).toFixed(7)},8.5000000,${20 / 0.44704}`,
    );
    const [path] = logFiles({ "r.csv": content });
    const { files, total } = await found(path);
    expect(files[0].decided).toContainEqual({
      name: "speedUnit",
      answer: "mph",
      evidence: expect.stringMatching(/^recorded speed is 2\.24 times that from positions/),
    });
    expect(total.distance_km).toBeCloseTo((299 * 20) / 1000, 1);
  });

  it("is asked for all files at once", async () => {
    const paths = logFiles({ "a.csv": table("time,speed", (s) => `${s},20`), "b.csv": table("speed_kmh", () => "20") });
    const sentences = (await refused(...paths)).split("\n");
    expect(sentences).toEqual([expect.stringContaining("--speed-unit"), expect.stringContaining("--interval")]);
  });

  it("is no reason to take an answer in silence that no file needs", async () => {
    const [path] = logFiles({ "a.gpx": writeGpx(rows) });
    const { code, err } = await runCommand("trace", path, "--date", "2024-05-04", "--interval", "2");
    expect(code).toBe(0);
    expect(err.split("\n")).toEqual([
      "--interval: no file leaves this open, it is not used",
      "--date: no file leaves this open, it is not used",
    ]);
  });

  it.each([
    [["--speed-unit", "kph"], "--speed-unit"],
    [["--hemisphere", "N"], "--hemisphere"],
    [["--interval", "0"], "--interval"],
    [["--date", "2024-02-30"], "--date"],
  ])("takes no answer that is none: %j", async (answer, option) => {
    const [path] = logFiles({ "a.gpx": writeGpx(rows.slice(0, 50)) });
    expect(await refused(path, ...answer)).toMatch(new RegExp(`^${option}: found "`));
  });
});

describe("a planned route", () => {
  // 199 steps of 0.0005 degrees to the north are 11.07 km.
  const route = bare(Array.from({ length: 200 }, (_, i) => bareAt(50 + i * 0.0005, 8.5)).join(""));

  it("is called so, and its speeds are asked for", async () => {
    const [path] = logFiles({ "plan.gpx": route });
    const message = await refused(path);
    expect(message).toContain("plan.gpx: found a planned route of 11.1 km without times, not a drive");
    expect(message).toContain("speeds for it are wanted: --speeds");
    const drive = await runCommand("drive", changedDemoFile(), "--trace", path);
    expect(drive).toMatchObject({ code: 2, err: expect.stringContaining("writes a road to drive with --out") });
  });

  it("is driven at typed speeds, or at the interval of its points", async () => {
    const [path] = logFiles({ "plan.gpx": route });
    const typed = await found(path, "--speeds", "11 km at 60 km/h");
    expect(typed.files[0]).toMatchObject({ format: "route", quality: "assumed" });
    expect(typed.total.distance_km).toBeCloseTo(11, 6);
    const timed = await found(path, "--interval", "4");
    expect(timed.files[0].format).toBe("gpx");
    expect(timed.total.distance_km).toBeCloseTo(11.07, 0);
  });
});

describe("a file that is no sound log", () => {
  it.each<[string, string | Uint8Array, string]>([
    ["empty", "", "found nothing in it; a speed trace or a log"],
    ["blank", " \r\n\n", "found nothing in it"],
    ["a photograph", Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70), "found a photograph"],
    ["a letter", "Dear client,\nthank you for the log.\n", "found text without a table of numbers"],
    ["a single point", bare(bareAt(50, 8, 0)), "found 1 fix with a time"],
    ["a single point without a time", bare(bareAt(50, 8)), "found a single point"],
    [
      "at 0,0 throughout",
      bare(Array.from({ length: 99 }, (_, i) => bareAt(0, 0, i)).join("")),
      "every position at 0,0",
    ],
    [
      "XML that expands",
      `<!DOCTYPE gpx [<!ENTITY a "aa"><!ENTITY b "&a;&a;">]>${bare(bareAt(50, 8, 0))}`,
      "declares entities",
    ],
  ])("%s is refused", async (_, content, message) => {
    const [path] = logFiles({ "log.gpx": content });
    expect(await refused(path)).toMatch(/^log\.gpx: /);
    expect(await refused(path)).toContain(message);
  });

  it("with parts elsewhere is refused, and nothing is fetched", async () => {
    const asked: (string | undefined)[] = [];
    const server = createServer((request, response) => {
      asked.push(request.url);
      response.end();
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/x`;
    const body = bare(bareAt(50, 8, 0) + bareAt(50.01, 8, 60));
    const paths = logFiles({
      "a.gpx": `<!DOCTYPE gpx SYSTEM "${url}">${body}`,
      "b.gpx": `<!DOCTYPE gpx [<!ENTITY x SYSTEM "${url}">]>${body}`,
      "c.gpx": `<!DOCTYPE gpx [<!ENTITY % x SYSTEM "${url}"> %x;]>${body}`,
    });
    for (const path of paths) expect(await refused(path)).toContain("it is refused");
    await new Promise((resolve) => server.close(resolve));
    expect(asked).toEqual([]);
  });

  it("beyond the limit is refused before it is read, with the limit", async () => {
    const [path] = logFiles({ "big.gpx": "" });
    truncateSync(path, 200_000_001); // holes on the disk, not bytes
    expect(await refused(path)).toContain("at most 200 MB can be read");
  });

  it.each([
    ["gpx", writeGpx(rows)],
    ["nmea", writeNmea(rows)],
    ["csv", writeCsv(rows)],
  ] as const)("cut in half, a %s is read as far as it goes, which is said", async (format, bytes) => {
    // Wherever the cut falls: at each of the bytes of some row.
    const half = Math.floor(bytes.length / 2);
    for (const cut of [half, half + 17, half + 31]) {
      const [path] = logFiles({ "half.log": bytes.slice(0, cut) });
      const { code, out, err } = await runCommand("trace", path, "--json");
      expect(code).toBe(0);
      expect(err).toMatch(/end of the file/);
      const { files, total } = JSON.parse(out) as Found;
      expect(files[0].format).toBe(format);
      expect(files[0].fixes / rows.length).toBeCloseTo(0.5, 1);
      expect(total.distance_km).toBeGreaterThan(0.3 * drive_km);
      expect(total.distance_km).toBeLessThan(0.7 * drive_km);
    }
  });

  it("that ends without a line end is not called cut", async () => {
    const whole = new TextDecoder().decode(writeCsv(rows)).trimEnd();
    const [path] = logFiles({ "a.csv": whole });
    expect((await runCommand("trace", path)).err).toBe("");
    expect((await found(path)).files[0]).toMatchObject({ fixes: rows.length, badLines: 0 });
  });

  it("in Latin-1 or UTF-16 is read like one in UTF-8", async () => {
    const text = new TextDecoder().decode(writeCsv(rows)).replace("altitude", "Höhe");
    const paths = logFiles({
      "utf8.csv": text,
      "latin1.csv": Buffer.from(text, "latin1"),
      "utf16.csv": Buffer.concat([Buffer.of(0xff, 0xfe), Buffer.from(text, "utf16le")]),
    });
    const [utf8, ...others] = await Promise.all(paths.map((path) => found(path)));
    expect(others.map(({ files }) => files[0].readAs.encoding)).toEqual(["windows-1252", "utf-16le"]);
    for (const other of others) expect(other.trips).toEqual(utf8.trips);
    expect(utf8.total.climb_m).toBeGreaterThan(0);
    const [strict] = logFiles({ "s.csv": Buffer.from("\uFEFFtime_s,speed_kmh\n0,0\n5,30\n10,0\n", "utf16le") });
    expect((await found(strict)).files[0].format).toBe("trace");
  });
});

describe("drive over a log", () => {
  it("says that it was cleaned and how good it is", async () => {
    const [path] = logFiles({ "monday.gpx": writeGpx(rows) });
    const { code, err } = await runCommand("drive", changedDemoFile(), "--trace", path);
    expect(code).toBe(0);
    expect(err).toMatch(/^monday\.gpx: a log of 2 trips, 1[12](\.\d)? km, cleaned; (good|usable): /);
  });

  it("sends what the log leaves open to the command that takes the answer", async () => {
    const [path] = logFiles({ "r.csv": table("time,speed", (s) => `${s},20`) });
    const { code, err } = await runCommand("drive", changedDemoFile(), "--trace", path);
    expect(code).toBe(2);
    expect(err).toMatch(/--speed-unit .*; trace takes the answer, and writes a road to drive with --out$/);
  });
});

describe("trace --moved", () => {
  it("says beside each repair what it moved, for people and for programs", async () => {
    const [file] = logFiles({ "made.gpx": writeGpx(rows.slice(0, 700)) });
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

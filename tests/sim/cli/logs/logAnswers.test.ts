import { describe, expect, it } from "vitest";
import { writeGpx } from "../../../logs/logWriter.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { clock, found, logFiles, refused, rows, table } from "../commands/loggedWeek.ts";

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

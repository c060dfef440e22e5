import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

const road = "time_s,speed_mps,elevation_m\n0,0,10\n5,10,12\n15,10,17\n19,0,16\n25,0,16\n";

function roadFile(): string {
  const path = join(emptyFolder(), "road.csv");
  writeFileSync(path, road);
  return path;
}

it("gives a program files, trips and their total", async () => {
  const path = roadFile();
  const { code, out, err } = await runCommand("trace", path, "wltc-class-3b:low", "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const found = JSON.parse(out);
  expect(Object.keys(found)).toEqual(["files", "trips", "total"]);
  expect(found.files).toEqual([
    { file: path, format: "trace", fixes: 5, badLines: 0, repairs: [], quality: "as written", trace: "road" },
    {
      file: "wltc-class-3b:low",
      format: "cycle",
      fixes: 590,
      badLines: 0,
      repairs: [],
      quality: "as written",
      trace: "wltc-class-3b:low",
    },
  ]);
  expect(found.trips[0]).toEqual({
    id: "road",
    title: "road",
    start: null,
    duration_s: 25,
    distance_km: 0.145,
    mean_kmh: 20.88,
    moving_kmh: 27.4736842105, // 145 m in 19 s
    max_kmh: 36,
    moving_s: 19,
    stop_s: 6,
    stops: 0,
    relativePositiveAcceleration_mps2: 0.344827586207, // 50 / 145
    maxAcceleration_mps2: 2,
    maxDeceleration_mps2: 2.5,
    climb_m: 7,
    descent_m: 1,
  });
  expect(found.total.duration_s).toBe(25 + 589);
  expect(found.total.distance_km).toBeCloseTo(0.145 + 11140.3 / 3600, 9);
  expect(found.total.climb_m).toBeNull(); // the cycle has no heights
});

it("gives a person one column a trace and one for all of several", async () => {
  const { out } = await runCommand("trace", roadFile(), "udds");
  const [heading, ...lines] = out.split("\n");
  expect(heading?.trim().split(/ {2,}/)).toEqual(["road", "udds", "all of them"]);
  expect(lines.find((line) => line.startsWith("top speed (km/h)"))).toMatch(/ 36 +91\.2 +91\.2$/);
  expect(lines.find((line) => line.startsWith("climb (m)"))).toMatch(/ 7 +not known +not known$/);
  expect((await runCommand("trace", "udds")).out).not.toContain("all of them");
});

describe("--out", () => {
  it("writes a trace that reads back the same", async () => {
    const out = join(emptyFolder(), "out.csv");
    const written = await runCommand("trace", roadFile(), "--out", out);
    expect(written).toMatchObject({ code: 0, err: `written: ${out}` });
    expect(readFileSync(out, "utf8").split("\n").slice(0, 3)).toEqual([
      "time_s,speed_kmh,elevation_m",
      "0,0,10",
      "5,36,12",
    ]);
    expect((await runCommand("trace", out)).out.split("\n").slice(1)).toEqual(written.out.split("\n").slice(1));
  });

  it("never writes over the file it reads", async () => {
    const path = roadFile();
    expect(await runCommand("trace", path, "--out", path)).toMatchObject({ code: 2, out: "" });
    expect(readFileSync(path, "utf8")).toBe(road);
  });

  it("wants one trace", async () => {
    const out = join(emptyFolder(), "out.csv");
    expect((await runCommand("trace", "udds", "us06", "--out", out)).err).toContain("found 2 traces");
  });
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    [["trace"], "trace: found no cycle and no file"],
    [["trace", "uds"], "uds: found no cycle of this name; did you mean udds"],
    [["trace", "wltc-class-3b:lov"], "did you mean wltc-class-3b:low"],
    [["trace", "./none.csv"], "./none.csv: found no file of this name"],
    [["trace", "./cycles"], "./cycles: found a folder"],
    [["trace", "udds", "--out"], "--out FILE.csv is wanted"],
  ])("%j", async (words, message) => {
    const { code, out, err } = await runCommand(...words);
    expect(err).toContain(message);
    expect({ code, out }).toEqual({ code: 2, out: "" });
  });

  it("names the line of every fault of a trace", async () => {
    const path = join(emptyFolder(), "bad.csv");
    writeFileSync(path, "time_s,speed_kmh\n0,0\n2,5\n1,900\n");
    const { code, err } = await runCommand("trace", path);
    expect(code).toBe(2);
    expect(err.split("\n")).toEqual([
      "bad.csv line 4: found 1 s after 2 s, times must rise",
      "bad.csv line 4: found 900 km/h, at most 400 km/h is allowed",
    ]);
  });

  it("takes no photograph for a trace", async () => {
    const path = join(emptyFolder(), "car.csv");
    writeFileSync(path, Buffer.of(0xff, 0xd8, 0xff, 0xe0));
    expect(await runCommand("trace", path)).toMatchObject({ code: 2, err: expect.stringContaining("photograph") });
  });
});

import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");
const json = async (...words: readonly string[]) =>
  JSON.parse((await runCommand("gears", job, "--json", ...words)).out);

it("prints a row a gear, what the road asks, and which gear to live in", async () => {
  const { code, out } = await runCommand("gears", job, "--hill", "1 in 6");
  expect(code).toBe(0);
  expect(out).toMatch(/top speed 91\.2 km\/h, hill 16\.7 %/);
  expect(out).toMatch(/^first {2,}55\.6 {2,}50 /m);
  expect(out).toMatch(/^First: 13100 rpm at 91\.2 km\/h is beyond the motor/m);
});

it("has the keys that a program reads", async () => {
  const { gears, recommended, reasons, pack } = await json("--hill", "1 in 6", "--pack", "17 kWh");
  expect(pack).toBe("17 kWh");
  expect(gears.map(({ gear }: { gear: string }) => gear)).toEqual(["first", "second", "third", "fourth"]);
  for (const row of gears) {
    expect(row).toMatchObject({ range: null, top_kmh: expect.any(Number), steepestStart_percent: expect.any(Number) });
    expect(row.hill).toMatchObject({ starts: expect.any(Boolean), needed_Nm: expect.any(Number) });
    expect(row.hill.starts).toBe(row.steepestStart_percent > 100 / 6);
  }
  expect(recommended === null || typeof recommended.gear === "string").toBe(true);
  expect(reasons.length).toBeGreaterThan(1);
});

it("takes the top speed and the road that are typed", async () => {
  const { gears } = await json("--top", "70 mph", "--trace", "ece-15");
  const [first] = gears;
  // 70 mph through 3.75 x 4.1111 on wheels of 284 mm.
  expect(first.motorAtTop_rpm).toBeCloseTo(((70 * 0.44704 * 3.75 * 4.1111) / 0.284 / (2 * Math.PI)) * 60, -1);
});

it("has the gradients that the maker's rating climbs, where one is typed", async () => {
  const path = changedDemoFile({ "motor.rating": { continuous_kW: 15, peak_kW: 25, peak_s: 300 } });
  expect((await runCommand("gears", path)).out).toMatch(/cont\. +300 s/);
  const { gears } = JSON.parse((await runCommand("gears", path, "--json")).out);
  const [first, second, third, fourth] = gears.map(({ rated }: { rated: Record<string, number> }) => rated);
  for (const rated of [first, second, third]) expect(rated.peak_percent).toBeGreaterThan(rated.continuous_percent);
  // In fourth the torque cap binds before the power of either does.
  expect(fourth.peak_percent).toBe(fourth.continuous_percent);
  expect((await json()).gears[0].rated).toBeNull();
});

it("goes beside an old engine whose curve is typed, and says so", async () => {
  const curve = { speed_rpm: [1000, 2200, 3600, 4800], torque_Nm: [88, 112, 101, 82] };
  const path = changedDemoFile({ engine: { curve } });
  const { pace } = JSON.parse((await runCommand("gears", path, "--json")).out);
  expect(pace).toMatchObject({ engineCurve: "typed", engineAssumed: [], engineMissing: [] });
  const { code, out } = await runCommand("gears", path);
  expect(code).toBe(0);
  expect(out.replaceAll("\n", " ")).toContain("torque at full throttle is as typed, from 1000 rpm to 4800 rpm.");
  expect((await runCommand("torque", path)).out).toMatch(/old engine's peak 112 Nm/);
  expect((await json()).pace.engineCurve).toBe("drawn");
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    ["a hill that is none", ["--hill", "1 in 0"], /^--hill: found 1 in 0/],
    ["a wall", ["--hill", "95 %"], /^--hill: 95 % is not possible/],
    ["a speed of no car", ["--top", "900 mph"], /^--top: 900 mph .*is not possible/],
    ["a speed left open", ["--top", "unknown"], /^--top: found "unknown", a value is wanted here/],
    ["a pack that is none", ["--pack", "17kWh"], /^--pack: found no pack "17kWh"; did you mean 17 kWh/],
  ])("%s", async (_, words, message) => {
    const { code, out, err } = await runCommand("gears", job, ...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("a continuous rating beyond the motor's peak", async () => {
    const path = changedDemoFile({ "motor.rating": { continuous_kW: 90 } });
    expect((await runCommand("gears", path)).err).toMatch(
      /motor\.rating\.continuous_kW: found 90 kW, at most 38 kW wanted, the motor's peak power/,
    );
  });

  it("a curve of the engine that goes back", async () => {
    const curve = { speed_rpm: [1000, 3000, 2000], torque_Nm: [88, 112, 101] };
    const { code, err } = await runCommand("gears", changedDemoFile({ engine: { curve } }));
    expect(code).toBe(2);
    expect(err).toMatch(/engine\.curve\.speed_rpm\.2: found 2000 rpm after 3000 rpm, speeds must rise/);
  });

  it("no job", async () => {
    expect((await runCommand("gears")).err).toMatch(/^gears: found no job file/);
  });
});

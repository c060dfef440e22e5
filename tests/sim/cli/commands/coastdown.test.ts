import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

const BANDS = "60-50 mph 9.6 s; 30-20 mph 19.8 s";

it("gives drag area, rolling coefficient and coefficients with their bands", async () => {
  const { code, out } = await runCommand("coastdown", "--bands", BANDS, "--mass", "953", "--json");
  expect(code).toBe(0);
  const { dragArea_m2, rolling_coeff, f0_N, f1_Npmps, f2_Npmps2, mass_kg, notes } = JSON.parse(out);
  for (const { value, low, high } of [dragArea_m2, rolling_coeff, f0_N, f2_Npmps2]) {
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
  }
  expect(f1_Npmps).toEqual({ value: 0, low: 0, high: 0 });
  expect(mass_kg).toBe(953);
  // Two bands and two terms: the arctangents give the times back.
  const scale = Math.sqrt(f0_N.value / f2_Npmps2.value);
  const time_s = (high_mph: number, low_mph: number) =>
    ((953 * 1.04) / Math.sqrt(f0_N.value * f2_Npmps2.value)) *
    (Math.atan((high_mph * 0.44704) / scale) - Math.atan((low_mph * 0.44704) / scale));
  expect(time_s(60, 50)).toBeCloseTo(9.6, 6);
  expect(time_s(30, 20)).toBeCloseTo(19.8, 6);
  expect(notes.join("\n")).toMatch(/these are not counted again\. Not in it: the drag at the gearbox input/);
});

it("prints them for people, with what is in them", async () => {
  const { out } = await runCommand("coastdown", "--bands", BANDS, "--mass", "953 kg");
  expect(out).toMatch(/^drag area 0\.838 ± 0\.087 m², rolling coefficient 0\.0173 ± 0\.001\nf0 162 ± 9\.4 N/);
});

it("asks whether miles were read as kilometres where no car has such figures", async () => {
  const { out } = await runCommand("coastdown", "--bands", BANDS.replaceAll("mph", "m/s"), "--mass", "953", "--json");
  expect(JSON.parse(out).notes[0]).toMatch(/are those of hardly any car: were the speeds mph and read as km\/h/);
});

it("asks so too where the figures are only unlike a car of this mass", async () => {
  const { out } = await runCommand("coastdown", "--bands", BANDS.replaceAll("mph", "km/h"), "--mass", "953", "--json");
  expect(JSON.parse(out).notes[0]).toMatch(/were the speeds mph\? They would then be 0\.838 m² and 0\.0173/);
});

it("takes logs of both directions, and a bare column of speeds with its interval and unit", async () => {
  const folder = emptyFolder();
  // mph lost each second: 0.3 and as the square of speed; a twentieth more one way, less the other: by the harmonic mean the drag between.
  const lost = (mph: number) => 0.3 + 1.5e-4 * mph * mph;
  const column = (name: string, pace: number) => {
    const path = join(folder, name);
    const rows: string[] = [];
    let mph = 60;
    for (let i = 0; mph > 0; i++) {
      if (i % 100 === 0) rows.push(mph.toFixed(3));
      mph -= (pace * lost(mph)) / 100;
    }
    for (let i = 0; i < 20; i++) rows.push("0");
    writeFileSync(path, `speed\n${rows.join("\n")}\n`);
    return path;
  };
  const [there, back] = [column("there.csv", 1.05), column("back.csv", 0.95)];
  const answers = ["--interval", "1", "--speed-unit", "mph", "--mass", "1000", "--rotating", "1", "--json"];
  const { code, out, err } = await runCommand("coastdown", there, "--back", back, ...answers);
  expect([code, err.includes("Error")]).toEqual([0, false]);
  const { f0_N, f2_Npmps2, notes } = JSON.parse(out);
  const middle_N = f0_N.value + f2_Npmps2.value * (40 * 0.44704) ** 2;
  // Cleaning smooths a speed recorded once a second by a per cent or two.
  expect(Math.abs(middle_N / (1000 * lost(40) * 0.44704) - 1)).toBeLessThan(0.03);
  expect(notes.join("\n")).not.toMatch(/direction of each run is not known/);
  const oneWay = JSON.parse((await runCommand("coastdown", there, ...answers)).out);
  expect(oneWay.notes.join("\n")).toMatch(/direction of each run is not known/);
});

it("reads a recorded coast-down", async () => {
  const path = join(emptyFolder(), "coast.csv");
  const rows = Array.from({ length: 100 }, (_, i) => `${i},${(100 - i + 0.0022 * i * i).toFixed(4)}`);
  writeFileSync(path, `time_s,speed_kmh\n${rows.join("\n")}\n`);
  const { code, out } = await runCommand("coastdown", path, "--mass", "1400", "--json");
  expect(code).toBe(0);
  const { f0_N, f2_Npmps2 } = JSON.parse(out);
  // dv/dt at 50 km/h: (1 - 0.0044 i) km/h/s at i = 57.
  const middle_N = f0_N.value + f2_Npmps2.value * (50 / 3.6) ** 2;
  expect(middle_N / (1400 * 1.04 * ((1 - 0.0044 * 57.4) / 3.6))).toBeCloseTo(1, 1);
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    [["--bands", BANDS], /^--mass: found none, the car's mass as it rolled is wanted/],
    [["--mass", "953"], /^coastdown: found neither bands nor a log/],
    [["x.csv", "--bands", BANDS, "--mass", "953"], /^coastdown: found bands and a log/],
    [["--bands", "60-50 9.6 s", "--mass", "953"], /^--bands: found "60-50 9.6 s" without a unit of speed/],
    [["--bands", "60-50 mph 9.6 s", "--mass", "953"], /^--bands: found 1 band, at least 2 are wanted/],
    [["--bands", "60-50 mph 30 s; 30-20 mph 9 s", "--mass", "953"], /^--bands: found times that no rolling car makes/],
    [["--bands", BANDS, "--mass", "9"], /^--mass: 9 kg is not possible/],
    [["--bands", BANDS, "--mass", "953", "--rotating", "3"], /^--rotating: found "3", a number from 1 to 1.5/],
    [["--bands", BANDS, "--mass", "953", "--terms", "3"], /^--bands: found 2 bands, at least 3 are wanted/],
  ])("%j", async (words, message) => {
    const { code, out, err } = await runCommand("coastdown", ...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("a drive without a coast-down", async () => {
    // Slowing of the steady kind that a cycle has is braking, whatever its size.
    const { code, err } = await runCommand("coastdown", "ece-15", "--mass", "953");
    expect(code).toBe(2);
    expect(err).toMatch(/^ece-15: found times that no rolling car makes/);
    const path = join(emptyFolder(), "steady.csv");
    writeFileSync(path, "time_s,speed_kmh\n0,0\n10,50\n600,50\n605,0\n");
    const steady = await runCommand("coastdown", path, "--mass", "953");
    expect(steady.code).toBe(2);
    expect(steady.err).toMatch(/found no coast-down, a stretch is wanted in which the car rolls freely/);
  });
});

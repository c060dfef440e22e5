import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");
const road = ["--trace", "ece-15"];

describe("packs", () => {
  it("prints each layout that fits, what rules the others out, and the smallest that will do", async () => {
    const { code, out } = await runCommand("packs", job);
    expect(code).toBe(0);
    expect(out).toMatch(/^usual day 38 km on .*, ten years, winter/m);
    expect(out).toMatch(/^5s3p +126 +111 +8\d\.?\d? .* 127 +\d+ to \d+$/m);
    expect(out).toMatch(/^6s to 70s +6s: 151 V full, the controller stops at 140 V: at most 5$/m);
    expect(out).toMatch(/^5s3p \(12\.6 kWh\) is the smallest that will do\./m);
  });

  it("has the keys that a program reads", async () => {
    const { code, out } = await runCommand("packs", job, "--json", "--condition", "new", ...road);
    const found = JSON.parse(out);
    expect(code).toBe(0);
    expect(found.requirement).toMatchObject({
      day: "usual",
      day_km: 38,
      condition: "new",
      reserve_km: 0,
      sure: "asTaken",
      modulesMost: 70,
    });
    expect(found.layouts[0]).toMatchObject({
      seriesModules: 1,
      parallelModules: 1,
      fits: false,
      fault: "belowController",
      reason: "1s: 22.2 V on average, the controller needs 75 V: at least 4",
    });
    expect(found.layouts.filter(({ fits }: { fits: boolean }) => fits)[0]).toMatchObject({ reason: null, fault: null });
    expect(found.smallest).toMatchObject({ name: expect.stringMatching(/^[45]s\dp$/), why: expect.any(String) });
    expect(["only just", "enough", "not enough"]).toContain(found.smallest.verdict);
    expect(found.nextSmaller).toMatchObject({ name: expect.any(String), failsOn: expect.any(String) });
    expect(found.nextLarger.adds.mass_kg).toBeGreaterThan(30);
    expect(found.nextLarger.adds.cost.high).toBeGreaterThan(found.nextLarger.adds.cost.low);
    expect(found.nearest).toBeNull();
  });

  it("puts the pack that was asked for beside the smallest and its neighbours, for a person and for a program", async () => {
    const { out } = await runCommand("packs", job);
    expect(out).toMatch(/^29 kWh +asked for +29\.5 +296 .* \d+ of 240 +\d+ to \d+$/m);
    expect(out.replaceAll("\n", " ")).toMatch(/Beside 5s3p \(12\.6 kWh\), 29 kWh, as asked for, weighs 169 kg more/);
    const { beside, smallest } = JSON.parse((await runCommand("packs", job, "--json", ...road)).out);
    expect(beside.map(({ nominal_kWh }: { nominal_kWh: number }) => nominal_kWh)).toEqual(
      beside.map(({ nominal_kWh }: { nominal_kWh: number }) => nominal_kWh).toSorted((a: number, b: number) => a - b),
    );
    const roleOf = (role: string) => beside.find(({ roles }: { roles: string[] }) => roles.includes(role));
    expect(roleOf("smallest")).toMatchObject({ name: smallest.name, mass_kg: smallest.mass_kg, meets: true });
    expect(roleOf("asked for")).toMatchObject({
      name: "29 kWh",
      failingDays: { new: expect.any(Number), driven: 240 },
    });
    expect(roleOf("asked for").cost.high).toBeGreaterThan(roleOf("smallest").cost.high);
  });

  it("asks what the command line asks in place of the job: another day, a reserve, fewer and lighter packs", async () => {
    const words = ["--day", "longest", "--reserve", "5 mi", "--most", "20", "--mass", "150 kg", "--json", ...road];
    const { out } = await runCommand("packs", job, ...words);
    const { requirement, layouts, smallest, nearest } = JSON.parse(out);
    expect(requirement).toMatchObject({ day: "longest", modulesMost: 20, packMost_kg: 150 });
    expect(requirement.reserve_km).toBeCloseTo(8.047, 3);
    const fitting = layouts.filter(({ fits }: { fits: boolean }) => fits);
    expect(Math.max(...fitting.map(({ mass_kg }: { mass_kg: number }) => mass_kg))).toBeLessThanOrEqual(150);
    // 150 kg are not enough for the longest day in winter at ten years.
    expect([smallest, typeof nearest.failsOn]).toEqual([null, "string"]);
  });

  it("uses the best of the modules that were tested, and no more than there are", async () => {
    const tested = Array.from({ length: 16 }, (_, i) => ({ capacity_Ah: 40 - i }));
    const { out } = await runCommand("packs", changedDemoFile({ "module.tested": tested }), "--json", ...road);
    const byName = (series: number, parallel: number) =>
      JSON.parse(out).layouts.find(
        (one: { seriesModules: number; parallelModules: number }) =>
          one.seriesModules === series && one.parallelModules === parallel,
      );
    // The fifteenth best holds 26 Ah: three strings of it at 111 V.
    expect(byName(5, 3).nominal_kWh).toBeCloseTo((3 * 26 * byName(5, 3).nominal_V) / 1000, 6);
    expect(byName(5, 4).reason).toBe("5s4p: 20 modules, and 16 were tested");
  });
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    [["--most", "0"], /--most: found "0", a whole number from 1 to 400 modules is wanted/],
    [["--most", "10000"], /--most: found "10000", a whole number from 1 to 400 modules is wanted/],
    [["--day", "sunday"], /--day: found "sunday", one of usual, longest is wanted/],
    [["--condition", "spring"], /--condition: found "spring", one of new, winter, tenYearsWinter is wanted/],
    [["--reserve", "-5 km"], /--reserve: .*-5/],
    [["--mass", "0 kg"], /--mass: .*0/],
  ])("%s", async (words, message) => {
    const { code, out, err } = await runCommand("packs", job, ...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it.each([
    [
      "modules that hold nothing",
      { "module.tested": [{ capacity_Ah: 0 }] },
      /module\.tested\.0\.capacity_Ah: found 0 Ah/,
    ],
    ["no modules at all", { sizing: { modulesMost: 0 } }, /sizing\.modulesMost: found 0/],
    ["10,000 modules", { sizing: { modulesMost: 10_000 } }, /sizing\.modulesMost: found 10000/],
    [
      "a charger that begins above its end",
      { "charger.min_V": 140 },
      /charger\.min_V: found 140 V, below max_V \(132 V\) wanted/,
    ],
    [
      "a converter with no window",
      { "accessories.dcdcMin_V": 160 },
      /accessories\.dcdcMin_V: found 160 V, below dcdcMax_V/,
    ],
  ])("%s", async (_, changes, message) => {
    const { code, err } = await runCommand("packs", changedDemoFile(changes));
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});

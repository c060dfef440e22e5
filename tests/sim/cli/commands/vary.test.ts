import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");
const quick = ["--pack", "13 kWh", "--variants", "16", "--trace", "ece-15"];

describe("vary", () => {
  it("prints what is left in each state, how often it comes home, and what to measure, with progress on standard error", async () => {
    const { code, out, err } = await runCommand("vary", job, ...quick);
    expect(code).toBe(0);
    expect(out).toMatch(/16 variants of each pack, seed 1$/m);
    expect(out).toMatch(/^13 kWh +ten years, winter( +-?\d+\.?\d*){5} +\d+ %$/m);
    expect(out).toMatch(/^driveline\.finalDriveEfficiency_frac +0\.902 to 0\.938 +0\.\d\d +\d\.\d$/m);
    expect(err).toMatch(/^13 kWh: 25 % of 16 variants driven$/m);
    expect(err).toMatch(/^13 kWh: 100 % of 16 variants driven$/m);
  });

  it("has the keys that a program reads, and the same figures for the same seed", async () => {
    const run = async (...words: string[]) =>
      JSON.parse((await runCommand("vary", job, "--json", ...quick, ...words)).out);
    const found = await run("--seed", "9");
    expect(found).toMatchObject({ variants: 16, seed: 9, day_km: 38 });
    expect(found.packs).toHaveLength(1);
    expect(found.packs[0]).toMatchObject({ name: "13 kWh", driving: 16 });
    expect(found.packs[0].left_km.tenYearsWinter.p95).toBeGreaterThan(found.packs[0].left_km.tenYearsWinter.p5);
    expect(found.packs[0].unknowns[0]).toMatchObject({ rank_coeff: expect.any(Number), measure: expect.any(String) });
    expect(await run("--seed", "9")).toEqual(found);
    expect(await run("--seed", "10")).not.toEqual({ ...found, seed: 10 });
  });
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    [["--variants", "0"], /--variants: found "0", a whole number from 16 to 100000 variants is wanted/],
    [["--variants", "1e9"], /--variants: found "1e9"/],
    [["--seed", "-1"], /--seed: found "-1", a whole number from 0 to 2147483647/],
    [["--seed", "4294967296"], /--seed: found "4294967296"/],
    [["--seed", "1.5"], /--seed: found "1\.5"/],
    [["--pack", "13kWh"], /did you mean 13 kWh/],
  ])("%s", async (words, message) => {
    const { code, out, err } = await runCommand("vary", job, ...words);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });

  it("a band of more than twice the value", async () => {
    const origins = { "vehicle.added_kg": { from: "guessed", plusMinus_frac: 3 } };
    const { code, err } = await runCommand("vary", changedDemoFile({ origins }), ...quick);
    expect(code).toBe(2);
    expect(err).toMatch(/plusMinus_frac: found 3, 0 to 2 allowed/);
  });
});

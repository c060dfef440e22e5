import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readJobText } from "../../../../shared/job/readJob.ts";
import { type BuiltLog, drivenAndLogged, motionCsv, packCsv, shortDrive } from "../../../logs/builtCar.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { runCommand } from "../../../support/runCommand.ts";

const job = join(import.meta.dirname, "../../../../shared/demos/piano-tuner.bellhousing.json");
const folder = mkdtempSync(join(tmpdir(), "bellhousing-test-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const pack = ["--pack", "17 kWh"];
const date_s = 1_777_793_000; // 3 May 2026
let log: BuiltLog;

const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const withAmps = (
  change: (amps: number, i: number) => number,
  volts = (value: number, _i: number) => value,
): BuiltLog => ({
  ...log,
  current_A: log.current_A.map(change),
  voltage_V: log.voltage_V.map(volts),
});

beforeAll(() => {
  const change = { rolling_ratio: 1.2, drag_ratio: 1.1, accessories_W: 120, regen_ratio: 0.5 };
  const built = { seed: 3, change, gain_ratio: 1.01, sign: -1 as const, behind_s: 7 };
  log = drivenAndLogged(demoJob(0), 2, shortDrive(), built, date_s);
  file("motion.csv", motionCsv(log));
  file("pack.csv", packCsv(log));
});

const motion = () => join(folder, "motion.csv");

describe("a drive with hidden changes in two files whose clocks differ", () => {
  it("prints both lines, where they differ, what to look at, and writes the corrected job beside", async () => {
    const corrected = join(folder, "corrected.bellhousing.json");
    const { code, out, err } = await runCommand(
      "measure",
      job,
      motion(),
      join(folder, "pack.csv"),
      ...pack,
      "--corrected",
      corrected,
      "--years",
      "2",
    );
    expect(code).toBe(0);
    expect(err).toContain("--years: this drive does not show the pack's capacity");
    expect(out).toMatch(/^Logged \d+ Wh\/km, predicted by the job as it is \d+ Wh\/km: \d+ % more\./m);
    expect(out).toMatch(/Amps written as negative leave the pack/);
    expect(out).toMatch(/moved by \+[67]\.\d s/);
    expect(out).toMatch(/against 259 W in the job:\s+what\s+stays\s+on\?/);
    expect(out).toMatch(/^Range on the job’s road +\d+ km +\d+ km$/m);
    expect(out).toMatch(/^Days of the year not home, at 10 years +\d+ of \d+ +\d+ of \d+$/m);
    expect(out).toMatch(/The prediction stays as it was/);
    const [before, after] = [job, corrected].map((path) => readJobText(readFileSync(path, "utf8"), path));
    // Added at the pack by 120 W, at 12 V by the converter's 0.87 less; the band of the log is 25 W at most.
    expect(Math.abs(after.accessories.standing_W - before.accessories.standing_W - 120 * 0.87)).toBeLessThan(25);
    expect(after.origins["vehicle.tyres.rolling_coeff"]?.note).toMatch(
      /corrected from a drive of [\d.]+ km on 2026-05-03/,
    );
  });

  it("has the keys that a program reads, and the truth in its bands", async () => {
    const { code, out } = await runCommand("measure", job, motion(), join(folder, "pack.csv"), ...pack, "--json");
    expect(code).toBe(0);
    const found = JSON.parse(out);
    expect(found).toMatchObject({ pack: "17 kWh", day: "2026-05-03", predictedOn: null, verdict: expect.any(String) });
    expect(Math.abs(found.clock.offset_s - 7)).toBeLessThan(0.5);
    const of = (id: string) => found.corrected.find((one: { id: string }) => one.id === id);
    for (const [id, truth] of [
      ["rolling", 1.2],
      ["accessories", 120],
    ] as const) {
      expect(of(id).low).toBeLessThan(truth);
      expect(of(id).high).toBeGreaterThan(truth);
    }
    const ids = found.quantities.map(({ id }: { id: string }) => id);
    for (const id of [
      "distance_km",
      "discharge_kWh",
      "regen_kWh",
      "net_kWh",
      "net_Ah",
      "peak_A",
      "lowest_V",
      "standing_W",
    ])
      expect(ids).toContain(id);
    expect(found.doings.map(({ doing }: { doing: string }) => doing)).toEqual([
      "standing",
      "pulling away",
      "cruising",
      "climbing",
      "braking",
    ]);
  });
});

describe("logs that are no such drive are refused with one sentence", () => {
  const refused = async (name: string, text: () => string, sentence: RegExp, motionText?: () => string) => {
    const path = file(name, text());
    const moving = motionText ? file(`motion-${name}`, motionText()) : motion();
    const { code, err } = await runCommand("measure", job, moving, path, ...pack);
    expect(err).toMatch(sentence);
    expect(code).toBe(2);
  };

  it("the volts of the 12 V battery beside the pack's amps", () =>
    refused(
      "auxiliary.csv",
      () =>
        packCsv(
          withAmps(
            (amps) => amps,
            (_, i) => 12.8 + 0.1 * Math.sin(i / 40),
          ),
        ),
      /found 12\.7 to 12\.9 V, 17 kWh has \d+ to 1\d\d V: the 12 V battery was logged/,
    ));
  it("a charge beside the motion of a drive", () =>
    refused(
      "charged.csv",
      () =>
        packCsv(
          withAmps(
            (_, i) => -14 + Math.sin(i),
            (_, i) => 112 + i / 100,
          ),
        ),
      /found amps that flow one way while volts rise, and no drive in them: a log of charging/,
    ));
  it("amps all nought", () => refused("zero.csv", () => packCsv(withAmps(() => 0)), /found amps of 0 in all \d+ rows/));

  it("volts and amps swapped", () =>
    refused(
      "swapped.csv",
      () => packCsv({ ...log, voltage_V: log.current_A.map(Math.abs), current_A: log.voltage_V }),
      /the two are swapped/,
    ));

  it("another day", () =>
    refused(
      "late.csv",
      () => packCsv({ ...log, electricTime_s: log.electricTime_s.map((at_s) => at_s + 3 * 86_400) }),
      /no time in common/,
    ));

  it("another car's pack", () =>
    refused(
      "other.csv",
      () =>
        packCsv(
          withAmps(
            (amps) => amps,
            (volts) => 3 * volts,
          ),
        ),
      /found volts from \d+ to \d+, 17 kWh has 84 to 126 V: it is the log of another car/,
    ));

  it("amps that have nothing to do with the motion", () =>
    refused(
      "noise.csv",
      () => packCsv(withAmps((_, i) => 20 + 15 * Math.sin(i / 3))),
      /follows the motion at no offset of the clocks/,
    ));

  it("a log of charging", async () => {
    const rows = Array.from({ length: 400 }, (_, i) => `${date_s + 10 * i},${(110 + i / 40).toFixed(2)},${-15}`);
    const path = file("charge.csv", ["time_s,Pack voltage (V),Pack current (A)", ...rows, ""].join("\n"));
    const { code, err } = await runCommand("measure", job, path, ...pack);
    expect(code).toBe(2);
    expect(err).toMatch(/found a log of charging/);
    // 15 A at a mean of 115 V for 3990 s are 1.911 kWh; of 2.2 kWh at the socket that is 0.869.
    const { out } = await runCommand("measure", job, path, ...pack, "--socket", "2.2", "--json");
    expect(JSON.parse(out).charger.efficiency_frac.value).toBeCloseTo(0.8689, 3);
    const less = await runCommand("measure", job, path, ...pack, "--socket", "1.5");
    expect(less.err).toMatch(/more than went in/);
  });

  it("no volts and amps at all, and no log at all", async () => {
    const none = await runCommand("measure", job, motion(), ...pack);
    expect(none.err).toMatch(/found no volts and no amps of the pack in it, both are wanted/);
    const missing = await runCommand("measure", job);
    expect(missing.err).toMatch(/a job and at least one log are wanted/);
    expect([none.code, missing.code]).toEqual([2, 2]);
  });
});

import { describe, expect, it } from "vitest";
import { mixedDrive, shortDrive } from "../../../logs/builtCar.ts";
import { behind_s, coverageOf, jobWithDatasheet, recover } from "../../../logs/recoverBuilt.ts";
import { demoJob } from "../../../support/demoJob.ts";

// Synthetic truth: cars built otherwise than their job, driven by the project's own stepper at 0.2 s, logged at 1 Hz with noise, and
// recovered. What is hidden is drawn anew for each; tests/bench/measureCoverage.ts does the same over 200.
const job = jobWithDatasheet();

describe("twenty cars built otherwise than their job", () => {
  const recoveries = Array.from({ length: 20 }, (_, k) => recover(job, shortDrive(), k + 1));
  const found = coverageOf(recoveries);

  it("are recovered within bands that hold the truth about nine times of ten", () => {
    const bands = found.reduce((sum, { count }) => sum + count, 0);
    const held = found.reduce((sum, { count, held_frac }) => sum + count * held_frac, 0) / bands;
    expect(bands).toBeGreaterThanOrEqual(60);
    // 0.9 of 60 to 80 bands: three standard deviations of the binomial law are 0.11; the four bands of one car hang together.
    expect(held).toBeGreaterThan(0.79);
  });

  it("have what a log can tell, each value with all that looks like it, within the narrower bands as often", () => {
    const bands = found.reduce((sum, { count }) => sum + count, 0);
    const held = found.reduce((sum, { count, ownHeld_frac }) => sum + count * ownHeld_frac, 0) / bands;
    expect(held).toBeGreaterThan(0.79);
    for (const { half, ownHalf, ownError } of found) {
      expect(ownHalf).toBeLessThan(half);
      expect(ownError).toBeGreaterThan(ownHalf / 8);
    }
  });

  it("have the clock of their amps found to half a second and their sign for certain", () => {
    for (const [k, { linedUp }] of recoveries.entries()) {
      expect(Math.abs(linedUp.offset_s - behind_s)).toBeLessThan(0.5);
      expect(linedUp.sign).toBe((k + 1) % 2 === 0 ? 1 : -1);
    }
  });

  it("have bands that are worth something: errors are of their size, not a fraction of it", () => {
    for (const { half, error } of found) expect(error).toBeGreaterThan(half / 8);
  });
});

describe("ten such cars by the files of their loggers, read and cleaned, and ten by those of a receiver", () => {
  const ways = ["table", "receiver"] as const;
  const recoveries = ways.flatMap((way) =>
    Array.from({ length: 10 }, (_, k) => recover(job, shortDrive(), k + 31, way)),
  );
  const found = coverageOf(recoveries);
  const bands = found.reduce((sum, { count }) => sum + count, 0);

  it("are recovered within bands that hold the truth about nine times of ten, together with what looks alike and by themselves", () => {
    expect(bands).toBeGreaterThanOrEqual(60);
    // As above: 0.9 less three standard deviations of 60 to 80 bands.
    for (const of of [
      (one: (typeof found)[number]) => one.held_frac,
      (one: (typeof found)[number]) => one.ownHeld_frac,
    ])
      expect(found.reduce((sum, one) => sum + one.count * of(one), 0) / bands).toBeGreaterThan(0.79);
  });

  it("have no lean to one side: rolling and drag are off as often either way", () => {
    // The mean of so many errors lies within three of its standard deviations, unless there is a lean.
    for (const { id, ownBias, ownError, count } of found)
      if (id === "rolling" || id === "drag") expect(Math.abs(ownBias)).toBeLessThan((3 * ownError) / Math.sqrt(count));
  });

  it("have the clock of their amps found to half a second and their sign for certain", () => {
    for (const { linedUp, seed } of recoveries) {
      expect(Math.abs(linedUp.offset_s - behind_s)).toBeLessThan(0.5);
      expect(linedUp.sign).toBe(seed % 2 === 0 ? 1 : -1);
    }
  });
});

describe.each(["traces", "table"] as const)("forty mixed minutes at 1 Hz by %s", (way) => {
  const { fit } = recover(job, mixedDrive(), 77, way);
  const of = (id: string) => {
    const fitted = fit.fitted.find((each) => each.id === id);
    if (!fitted) throw new Error(`${id} was not corrected`);
    return fitted;
  };

  it("leave rolling and drag each within 8 % with all that looks like them, and accessories within 25 W by themselves", () => {
    expect(of("rolling").ownHalf / of("rolling").value).toBeLessThan(0.08);
    expect(of("drag").ownHalf / of("drag").value).toBeLessThan(0.08);
    const { low, high } = of("accessories");
    expect((high - low) / 2).toBeLessThan(25);
    expect(fit.left).toContain("gain");
  });

  it("say what looks like rolling and how much that leaves open of it, which adds up to its band as squares do", () => {
    const { alike, ownHalf, low, high } = of("rolling");
    expect(alike.map(({ id }) => id).sort()).toEqual([...fit.left].sort());
    expect(Math.hypot(ownHalf, ...alike.map(({ half }) => half))).toBeCloseTo((high - low) / 2, 9);
    // A stage between motor and road that loses more asks for less rolling: the same constant force.
    for (const { id, slope_ratio } of alike)
      if (id === "meshLoss" || id === "motorLoss" || id === "mass") expect(slope_ratio).toBeLessThan(0);
  });
});

it("leaves a motor's losses open where the job knows them to a quarter only: they would take up what rolling resistance does", () => {
  const { fit, truth } = recover(demoJob(0), mixedDrive(), 9001, "table");
  expect(fit.left).toContain("motorLoss");
  const rolling = fit.fitted.find(({ id }) => id === "rolling");
  expect(rolling?.low).toBeLessThan(truth.rolling);
  expect(rolling?.high).toBeGreaterThan(truth.rolling);
});

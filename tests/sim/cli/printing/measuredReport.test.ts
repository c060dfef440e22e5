import { describe, expect, it } from "vitest";
import { message } from "../../../../shared/quantity/message.ts";
import { measuredJson, measuredReport } from "../../../../sim/cli/printing/measuredReport.ts";
import type { Measured } from "../../../../sim/plan/measured/measure.ts";
import { bareJob } from "../../../support/bareCar.ts";

const job = bareJob();
const fitted = { id: "rolling", value: 1.2, low: 1.1, high: 1.3, start: 1, ownHalf: 0.15, before: 0.2, alike: [] };
const found = {
  pack: "only",
  linedUp: { offset_s: 2, how: "found", correlation: 0.95, sign: 1 },
  zero: { zero_A: 0 },
  quantities: [
    { id: "use_Whpkm", measured: 110, predicted: { value: 100, low: 90, high: 105 }, corrected: 109, isInside: false },
    { id: "regen_kWh", measured: 0, predicted: { value: 0, low: 0, high: 0 }, corrected: 0, isInside: true },
  ],
  doings: [{ doing: "driving", time_s: 90, measured_Wh: 1100, predicted_Wh: 1000, corrected_Wh: 1090 }],
  fit: { fitted: [fitted], left: ["drag"], mixed: [], misfit_ratio: 1, segments: 20 },
  packFound: { predicted_ohm: 0.1, predicted_Ah: 100, used_frac: 0.1 },
  isDoubted: false,
  verdict: "check",
  sentences: [message`The verdict.`, message`Another.`],
  notTold: [message`Not told.`],
  remarks: [message`A remark.`],
} as unknown as Measured;

describe("for people", () => {
  const report = measuredReport({ job, found, day: "2026-05-03", distance_km: 12.34 });
  it("begins with the drive and the verdict", () => {
    expect(report).toMatch(/^Bare car\nonly aboard; a logged drive of 12\.3 km, 2026-05-03\n\nThe verdict\./);
  });
  it("puts what was logged beside the prediction and its band", () => {
    const row = report.split("\n").find((line) => line.includes("110 Wh/km"));
    expect(
      row
        ?.trim()
        .split(/\s{2,}/)
        .slice(1),
    ).toEqual(["110 Wh/km", "100 Wh/km", "90 Wh/km to 105 Wh/km", "+10 %", "outside", "109 Wh/km"]);
  });
  it("has a row for what the car was doing, and how the log was read last", () => {
    expect(report).toMatch(/driving\s+1\.5\s+1100\s+1000\s+100\s+1090/);
    expect(report).toMatch(/How the log was read\nA remark\.$/);
  });
  it("is the job's name alone where there was no drive", () => {
    expect(measuredReport({ job })).toBe("Bare car");
  });
});

it("gives a program the same, with all that looks like a value beside it", () => {
  const json = measuredJson({ job, found, distance_km: 12.34 });
  expect(json.corrected[0]).toMatchObject({
    value: 1.2,
    together: { low: expect.closeTo(1.05, 12), high: expect.closeTo(1.35, 12) },
  });
  expect(json).toMatchObject({ day: null, lines: null, left: ["drag"], findings: ["The verdict.", "Another."] });
  expect(() => measuredJson({ job })).toThrow("a report of nothing was asked for");
});

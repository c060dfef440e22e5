import { describe, expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { cleanLog } from "../../../sim/route/clean/cleanLog.ts";
import { CancelledError } from "../../../sim/route/log/steps.ts";
import { LARGEST_LOG_MB, readLog } from "../../../sim/route/readLog.ts";
import { makeLog, makeTruth, openSky } from "../../logs/logMaker.ts";
import { writeCsv, writeGpx, writeNmea } from "../../logs/logWriter.ts";

const encoder = new TextEncoder();
const codeOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) {
      return error.problems[0].code;
    }
    throw error;
  }
  return "none";
};
const rows = makeLog(makeTruth(new Array(120).fill(15), 1), { ...openSky, seed: 2 });

describe("reading a log", () => {
  it.each([
    ["gpx", writeGpx(rows)],
    ["nmea", writeNmea(rows)],
    ["table", writeCsv(rows)],
  ] as const)("finds %s by its content, whatever the name, and gives back what was written", (format, bytes) => {
    const log = readLog("photo.jpg", bytes);
    expect(log.format).toBe(format);
    expect(log.fixes.count).toBe(rows.length);
    for (const [i, row] of rows.entries()) {
      // Printed digits: 1e-7 degrees, 5 decimals of a minute at worst; 0.01 of the speed's unit; 0.1 m.
      expect(Math.abs(log.fixes.latitude_deg[i] - row.latitude_deg)).toBeLessThan(1e-7);
      expect(Math.abs(log.fixes.longitude_deg[i] - row.longitude_deg)).toBeLessThan(1e-7);
      expect(Math.abs(log.fixes.speed_mps[i] - row.speed_mps)).toBeLessThan(0.0051);
      expect(Math.abs(log.fixes.elevation_m[i] - row.elevation_m)).toBeLessThan(0.0501);
      expect(Math.abs(log.fixes.time_s[i] - row.time_s)).toBeLessThan(1e-3);
    }
  });

  it.each([
    ["an empty file", new Uint8Array(0), "emptyFile"],
    ["blank space", encoder.encode(" \r\n \n"), "emptyFile"],
    ["a photograph", Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70), "notALog"],
    ["a zip archive", encoder.encode("PK\u0003\u0004rest"), "notALog"],
    ["numbers that are no text", Uint8Array.from({ length: 4000 }, (_, i) => (i * 7919) % 256), "notALog"],
    ["a web page", encoder.encode("<!DOCTYPE html><html><body>log</body></html>"), "notALog"],
    ["a letter", encoder.encode("Dear client,\nthank you for the log.\nYours\n"), "notALog"],
    ["XML of another kind", encoder.encode('<?xml version="1.0"?><invoice><sum>3</sum></invoice>'), "notALog"],
  ])("refuses %s", (_, bytes, code) => {
    expect(codeOf(() => readLog("x", bytes))).toBe(code);
  });

  it("refuses a file beyond the limit, and says the limit", () => {
    const bytes = new Uint8Array(LARGEST_LOG_MB * 1e6 + 1);
    expect(codeOf(() => readLog("big.gpx", bytes))).toBe("tooLarge");
    expect(() => readLog("big.gpx", bytes)).toThrow(/200 MB/);
  });

  it("refuses options that are none, all of them at once", () => {
    const run = () => readLog("x.csv", encoder.encode("a"), { interval_s: -1, date: "2024-02-30" });
    expect(run).toThrow(InputError);
    try {
      run();
    } catch (error) {
      expect((error as InputError).problems.map(({ where }) => where)).toEqual(["--interval", "--date"]);
    }
  });

  it("tells how far it is and stops when asked to", () => {
    const seen: number[] = [];
    const bytes = new Uint8Array(Array.from({ length: 12 }, () => [...writeCsv(rows)]).flat());
    readLog("a.csv", bytes, {}, (fraction_frac) => seen.push(fraction_frac));
    expect(seen.length).toBeGreaterThan(2);
    expect(seen[seen.length - 1]).toBe(1);
    expect([...seen].sort((a, b) => a - b)).toEqual(seen);
    expect(() => readLog("a.csv", bytes, {}, undefined, () => true)).toThrow(CancelledError);
  });
});

describe("a log that cannot become a drive", () => {
  it("of a single point is refused when it is to be cleaned", () => {
    const log = readLog("a.gpx", writeGpx(rows.slice(0, 1)));
    expect(codeOf(() => cleanLog(log))).toBe("tooFewFixes");
  });

  it("of fixes at 0,0 alone is refused when it is to be cleaned", () => {
    const log = readLog(
      "a.gpx",
      writeGpx(rows.map((row) => ({ ...row, latitude_deg: 0, longitude_deg: 0, speed_mps: Number.NaN }))),
    );
    expect(codeOf(() => cleanLog(log))).toBe("noUsablePosition");
  });
});

describe("an interval given for positions without times", () => {
  const encoder = new TextEncoder();
  // Bends of a planned route, 209 m apart: one a second would be 752 km/h.
  const route = (step_deg: number) =>
    encoder.encode(
      `<gpx><rte>${Array.from({ length: 60 }, (_, i) => `<rtept lat="${50 + i * step_deg}" lon="8"/>`).join("")}</rte></gpx>`,
    );

  it("is refused where it makes the car faster than any", () => {
    expect(() => readLog("plan.gpx", route(0.001879), { interval_s: 1 })).toThrow(
      /plan\.gpx: found points 209 m apart, which 1 s a row would make 75\d km\/h: a planned route/,
    );
  });

  it("is taken where a car can do it", () => {
    expect(readLog("plan.gpx", route(0.0002), { interval_s: 1 }).hasTimes).toBe(true);
    expect(readLog("plan.gpx", route(0.001879), { interval_s: 10 }).hasTimes).toBe(true);
  });
});

import { describe, expect, it } from "vitest";
import { packLogOf } from "../../../sim/route/packLog.ts";
import { readLog } from "../../../sim/route/readLog.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (rows: readonly string[], header: string) =>
  packLogOf(readLog("pack.csv", bytes([header, ...rows, ""].join("\n")), { isPackWanted: true }), false);

describe("a battery logger's table without speeds or positions", () => {
  it("is refused as a drive and read where the pack is wanted", () => {
    const text = bytes("time_s,Pack voltage (V),Pack current (A)\n0,108,12\n1,107.5,14\n2,107,18\n");
    expect(() => readLog("pack.csv", text)).toThrow(/wanted a speed, or a latitude and a longitude/);
    expect(readLog("pack.csv", text, { isPackWanted: true }).fixes.count).toBe(3);
  });

  it("has a state of charge in per cent as a share", () => {
    const rows = Array.from({ length: 30 }, (_, i) => `${i},108,12,${(92 - i / 10).toFixed(1)}`);
    const log = read(rows, "time_s,Pack voltage (V),Pack current (A),SOC (%)");
    expect(log.soc_frac?.[0]).toBeCloseTo(0.92, 6);
  });

  it("spreads the rows of one minute of its clock evenly and says so", () => {
    const rows = Array.from({ length: 12 }, (_, i) => `2026-05-03 08:${10 + Math.floor(i / 4)},108,${10 + i}`);
    const log = read(rows, "time,Pack voltage (V),Pack current (A)");
    const steps_s = Array.from(log.time_s.slice(1), (at_s, k) => at_s - log.time_s[k]);
    for (const step_s of steps_s) expect(step_s).toBeCloseTo(15, 6);
    expect(log.remarks.join(" ")).toMatch(/share a time of its clock/);
    expect(log.isClockCoarse).toBe(true);
    expect(log.clock).toBe("dated");
  });

  it("keeps the longest run where its clock begins anew", () => {
    const rows = [
      ...Array.from({ length: 400 }, (_, i) => `${i},108,12`),
      ...Array.from({ length: 900 }, (_, i) => `${i},107,14`),
    ];
    const log = read(rows, "time_s,Pack voltage (V),Pack current (A)");
    expect(log.time_s.length).toBe(900);
    expect(log.voltage_V[0]).toBe(107);
    expect(log.remarks.join(" ")).toMatch(/begins anew once; the longest part is used, 69 %/);
  });

  it("is read with one value a row, each laid between its neighbours", () => {
    const rows = Array.from({ length: 200 }, (_, i) => [
      `${i * 4},Pack voltage (V),${108 - i / 100}`,
      `${i * 4 + 2},Pack current (A),${10 + i}`,
    ]).flat();
    const log = read(rows, "time_s,signal,value");
    const both = Array.from(log.time_s).filter((_, i) => !Number.isNaN(log.voltage_V[i] + log.current_A[i]));
    expect(both.length).toBeGreaterThan(180);
  });

  it("turns amps round that are written negative when they leave, and remembers that the file had them so", () => {
    const rows = Array.from({ length: 60 }, (_, i) => `${i},108,${-12 - (i % 5)}`);
    const log = read(rows, "time_s,Pack voltage (V),Pack current (A)");
    expect(log.current_A[0]).toBe(12);
    expect(log.fileSign).toBe(-1);
  });
});

import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { lineUp, powerSamples } from "../../../../sim/plan/measured/lineUp.ts";
import type { PackLog } from "../../../../sim/trace/packLog.ts";
import { driveOf, packLogOf, times } from "./logsByHand.ts";

/** Power that rises and falls at no fixed period, so that only one offset lays a log on it. */
const shape = (at_s: number) => 5000 + 4000 * Math.sin(at_s / 9) + 3000 * Math.sin((at_s * at_s) / 4000);
const seconds = Array.from({ length: 240 }, (_, i) => i + 0.5);
const drive = driveOf(times(240, 10), { power_W: seconds.map(shape) });
const FROM_s = 1_700_000_000;
const dated = { ...drive, time_s: drive.time_s.map((at_s) => at_s + FROM_s) };

/** Amps of 100 V as the drive has them, on a clock that is behind by so much. */
function logOf(behind_s: number, changes: Partial<PackLog> & { readonly sign?: number } = {}): PackLog {
  const { sign = 1, ...others } = changes;
  const amps = seconds.map((at_s) => (sign * shape(at_s)) / 100);
  return packLogOf(times(240, 100), amps, {
    time_s: Float64Array.from(seconds, (at_s) => at_s - behind_s),
    ...others,
  });
}
const offset = (...of: Parameters<typeof lineUp>) => lineUp(...of).offset_s;

function problemOf(...of: Parameters<typeof lineUp>) {
  try {
    lineUp(...of);
  } catch (error) {
    if (error instanceof InputError) return error.problems[0];
    throw error;
  }
  return undefined;
}

describe("clocks laid on each other", () => {
  it("are found to a tenth of a second, of one file within a minute", () => {
    const found = lineUp(drive, logOf(7.4));
    expect(Math.abs(found.offset_s - 7.4)).toBeLessThan(0.1);
    expect(found).toMatchObject({ how: "found", sign: 1 });
    expect(found.correlation).toBeGreaterThan(0.99);
    expect(Math.abs(offset(drive, logOf(-7.4)) + 7.4)).toBeLessThan(0.1);
    expect(Math.abs(offset(drive, logOf(58)) - 58)).toBeLessThan(0.2);
  });
  it("have the sign of the amps with them", () => {
    expect(lineUp(drive, logOf(7.4, { sign: -1 }))).toMatchObject({ sign: -1 });
    expect(lineUp(drive, logOf(7.4, { sign: -1 })).correlation).toBeGreaterThan(0.99);
  });
  it("are found within a quarter of an hour where both have a date", () => {
    expect(Math.abs(offset(drive, logOf(-140, { clock: "dated" })) + 140)).toBeLessThan(0.2);
  });
  it("are found hours apart where both have a date: local time and UTC", () => {
    expect(Math.abs(offset(drive, logOf(-7200, { clock: "dated" })) + 7200)).toBeLessThan(0.2);
  });
  it("are found wherever they are where the log counts from its own start", () => {
    expect(Math.abs(offset(dated, logOf(0, { clock: "free" })) - FROM_s)).toBeLessThan(0.2);
  });
  it("are as given where they are given, the fit there told", () => {
    const given = lineUp(drive, logOf(7.4), 7.4);
    expect(given).toMatchObject({ offset_s: 7.4, how: "given", sign: 1 });
    expect(given.correlation).toBeGreaterThan(0.99);
    expect(lineUp(drive, logOf(7.4, { sign: -1 }), 7.4)).toMatchObject({ sign: -1 });
    expect(lineUp(drive, logOf(7.4, { sign: -1 }), 7.4).correlation).toBeGreaterThan(0.99);
  });
});

describe("what cannot be laid on each other", () => {
  it("has no time in common: said with both times, in seconds or by the date", () => {
    expect(problemOf(drive, logOf(-5000))).toEqual({
      code: "no-overlap",
      where: "pack.csv",
      message: "found volts and amps from 5001 s to 5240 s and motion from 1 s to 240 s: they have no time in common",
    });
    expect(problemOf(drive, logOf(0), 1000)?.message).toMatch(/from 1001 s to 1240 s and motion/);
    expect(problemOf(dated, logOf(0))?.message).toMatch(/and motion from 2023-11-14 22:13 to 2023-11-14 22:17: they/);
  });
  it("does not go together at any offset", () => {
    // Amps that alternate from second to second follow nothing that a drive does.
    const amps = seconds.map((_, i) => (i % 2 === 0 ? 10 : 50));
    const noise = packLogOf(times(240, 100), amps);
    expect(problemOf(drive, noise)?.code).toBe("not-together");
    expect(problemOf(drive, noise)?.message).toMatch(
      /^found power that follows the motion at no offset of the clocks \(best correlation 0\.\d\d, 0\.45 wanted\): another drive/,
    );
  });
});

it("makes power of the rows that have volts and amps", () => {
  const { time_s, values } = powerSamples(packLogOf([100, Number.NaN, 90, 80], [10, 5, Number.NaN, -2]));
  expect(Array.from(time_s)).toEqual([0.5, 3.5]);
  expect(Array.from(values)).toEqual([1000, -160]);
});

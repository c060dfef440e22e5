import { describe, expect, it } from "vitest";
import { atSample, packSamples } from "../../../../sim/plan/measured/packSamples.ts";
import type { PackLog } from "../../../../sim/trace/packLog.ts";
import { driveOf, packLogOf, sameClock, times } from "./logsByHand.ts";

/** Ten seconds of driving, rows at 0.5 s to 9.5 s. */
const drive = driveOf(times(10, 5));
const at = (time_s: readonly number[], changes: Partial<PackLog> = {}): PackLog =>
  packLogOf(times(time_s.length, 100), times(time_s.length, 10), { time_s: Float64Array.from(time_s), ...changes });
const every = (count: number, step_s: number, from_s = 0.5) =>
  Array.from({ length: count }, (_, k) => from_s + k * step_s);
const list = (column: ArrayLike<number>) => Array.from(column);

describe("volts and amps laid on a drive", () => {
  it("are at the row before them and a share of the way to the next", () => {
    const { row, part_frac } = packSamples(drive, at([1.75, 3.5, 5]), sameClock, 0);
    expect(list(row)).toEqual([1, 3, 4]);
    expect(list(part_frac)).toEqual([0.25, 0, 0.5]);
  });
  it("are moved by the clocks' offset, turned round and freed of the ammeter's zero", () => {
    const lined = { ...sameClock, offset_s: 1000, sign: -1 as const };
    const samples = packSamples(drive, at(every(10, 1, -999.5)), lined, 2);
    expect(samples.time_s[0]).toBe(0.5);
    // -10 A, less a zero of 2 A, at 100 V.
    expect(samples.current_A[0]).toBe(-12);
    expect(samples.power_W[0]).toBe(-1200);
    expect(samples.voltage_V[0]).toBe(100);
  });
  it("reach half a second beyond the first and the last row's middle, at that row, and no further", () => {
    const { time_s, row, part_frac } = packSamples(drive, at([-0.1, 0.1, 5, 9.9, 10.1]), sameClock, 0);
    expect(list(time_s)).toEqual([0.1, 5, 9.9]);
    expect(list(row)).toEqual([0, 4, 8]);
    expect(list(part_frac)).toEqual([0, 0.5, 1]);
  });
  it("leave out what lies between two parts of the drive, and what is asked to be left out", () => {
    const parts = driveOf(times(10, 5), { part: [...times(5, 0), ...times(5, 1)] });
    expect(packSamples(parts, at(every(10, 1, 0.6)), sameClock, 0).count).toBe(9);
    const without = packSamples(drive, at(every(10, 1)), sameClock, 0, [{ from_s: 2.5, to_s: 4.5 }]);
    expect(list(without.time_s)).toEqual([0.5, 1.5, 5.5, 6.5, 7.5, 8.5, 9.5]);
  });
  it("have nothing of rows without a value", () => {
    const holed = packLogOf([100, Number.NaN, 100, 100], [10, 10, Number.NaN, 10]);
    expect(packSamples(drive, holed, sameClock, 0).count).toBe(2);
  });
});

describe("finer samples", () => {
  it("are averaged to the seconds of their own clock, power as the mean of products", () => {
    const log = packLogOf([100, 110, 120, 90], [10, 20, 30, 5], {
      time_s: Float64Array.of(1.1, 1.4, 1.7, 2.1),
    });
    const { time_s, voltage_V, current_A, power_W } = packSamples(drive, log, sameClock, 0);
    expect(list(time_s)).toEqual([expect.closeTo(1.4, 9), 2.1]);
    expect(list(voltage_V)).toEqual([110, 90]);
    expect(list(current_A)).toEqual([20, 5]);
    // (1000 + 2200 + 3600) / 3.
    expect(list(power_W)).toEqual([expect.closeTo(6800 / 3, 9), 450]);
  });
});

describe("the time that a sample stands for", () => {
  it("is half the way to either neighbour, and as much beyond the first and the last", () => {
    expect(list(packSamples(drive, at([1, 2, 4, 5, 6, 7]), sameClock, 0).weight_s)).toEqual([1, 1.5, 1.5, 1, 1, 1]);
  });
  it("is half an interval on the side where the logger was silent for more than two and a half", () => {
    const { weight_s, interval_s } = packSamples(drive, at([1, 2, 3, 5.5, 6.5]), sameClock, 0);
    expect(interval_s).toBe(1);
    expect(list(weight_s)).toEqual([1, 1, 1.75, 1.75, 1]);
    const silent = packSamples(drive, at([1, 2, 3, 5.6, 6.6]), sameClock, 0);
    expect(list(silent.weight_s).map((each) => Math.round(100 * each) / 100)).toEqual([1, 1, 1, 1, 1]);
  });
  it("covers all of the drive, a half or a part of it", () => {
    expect(packSamples(drive, at(every(10, 1)), sameClock, 0).cover_frac).toBe(1);
    expect(packSamples(drive, at(every(5, 1)), sameClock, 0).cover_frac).toBe(0.5);
    expect(packSamples(drive, at(every(40, 0.25, 0.1)), sameClock, 0).cover_frac).toBeLessThanOrEqual(1);
  });
  it("takes a single sample for a second's", () => {
    const { interval_s, weight_s } = packSamples(drive, at([4]), sameClock, 0);
    expect({ interval_s, weight_s: list(weight_s) }).toEqual({ interval_s: 1, weight_s: [1] });
  });
  it("has the middle of all intervals, not their mean", () => {
    expect(packSamples(drive, at([1, 2, 3, 4, 9]), sameClock, 0).interval_s).toBe(1);
  });
});

it("gives a column of the drive at a sample by a straight line", () => {
  const samples = packSamples(drive, at([1.75]), sameClock, 0);
  expect(atSample(samples, Float64Array.of(0, 10, 30, 0), 0)).toBe(15);
});

import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { checkDriven, checkPackLog, isCharging } from "../../../../sim/plan/measured/checkPackLog.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { packLogOf, times } from "./logsByHand.ts";

const base = inventedJob();
// 32 cells in series, 80 to 116.8 V by their limits, and 16 cells: 40 to 58.4 V.
const job = {
  ...base,
  packs: [
    { ...base.packs[0], name: "Large", seriesModules: 8 },
    { ...base.packs[0], name: "Half", seriesModules: 4 },
  ],
};

function problemOf(check: () => void) {
  try {
    check();
  } catch (error) {
    if (error instanceof InputError) return error.problems[0];
    throw error;
  }
  return undefined;
}
const rise = (from: number, to: number, count = 100) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
const ofVolts = (from: number, to: number, amps = rise(5, 80)) =>
  problemOf(() => checkPackLog(packLogOf(rise(from, to), amps), job, 0));

describe("a log that can be this pack's", () => {
  it("has volts within its limits, or up to 12 % beyond", () => {
    expect(ofVolts(80, 116.8)).toBeUndefined();
    expect(ofVolts(70.5, 130.7)).toBeUndefined();
    expect(ofVolts(69, 116)?.code).toBe("another-pack");
    expect(ofVolts(80, 132.5)?.code).toBe("another-pack");
  });
  it("may have one reading in a hundred beyond at either end", () => {
    const log = packLogOf([0, ...rise(90, 110, 198), 500], times(200, 7));
    expect(problemOf(() => checkPackLog(log, job, 0))).toBeUndefined();
    const two = packLogOf([0, 0, 0, ...rise(90, 110, 197)], times(200, 7));
    expect(problemOf(() => checkPackLog(two, job, 0))?.code).toBe("another-pack");
  });
  it("has at least twenty rows with both", () => {
    const withGap = (count: number) =>
      packLogOf([...times(count, 100), Number.NaN, 100], [...times(count + 1, 5), Number.NaN]);
    expect(problemOf(() => checkPackLog(withGap(20), job, 0))).toBeUndefined();
    expect(problemOf(() => checkPackLog(withGap(19), job, 0))).toEqual({
      code: "pack-rows",
      where: "pack.csv",
      message: "found 19 rows with volts and amps, at least 20 wanted",
    });
  });
});

describe("a log that cannot", () => {
  it("has no amps at all", () => {
    expect(ofVolts(90, 100, times(100, 0))?.message).toBe(
      "found amps of 0 in all 100 rows: the clamp or shunt was not connected, or the column is another one",
    );
    // The same amps all the time are a steady load, not none.
    expect(ofVolts(90, 100, times(100, 3))).toBeUndefined();
  });
  it("has volts and amps swapped", () => {
    expect(ofVolts(5, 60, rise(90, 110))?.message).toBe(
      "found volts from 6 to 59 and amps from 90 to 110: the two are swapped; exchange the names of the columns",
    );
    // High volts beside amps that would do as volts: not swapped, since a pack's volts are not too high as amps.
    expect(ofVolts(150, 180, rise(90, 110))?.code).toBe("another-pack");
  });
  it("is of the 12 V battery, with what was found and what the pack has", () => {
    expect(ofVolts(12.4, 14.4)?.message).toBe(
      "found 12.4 to 14.4 V, Large has 80 to 117 V: the 12 V battery was logged; the volts between the pack's own terminals are wanted",
    );
    expect(problemOf(() => checkPackLog(packLogOf(times(100, 12.8), rise(5, 80)), job, 0))?.message).toMatch(
      /^found 12\.8 V, Large has 80 to 117 V/,
    );
  });
  it("is of another pack of the job, which is named, or of another car", () => {
    expect(ofVolts(45, 55)?.message).toBe("found volts from 45 to 55, Large has 80 to 117 V: they are those of Half");
    expect(ofVolts(300, 330)?.message).toMatch(/, Large has 80 to 117 V: it is the log of another car$/);
  });
});

describe("a log of charging", () => {
  const charging = packLogOf(rise(90, 110), times(100, -10));
  it("has volts that rise and amps that flow one way", () => {
    expect(isCharging(charging)).toBe(true);
    expect(isCharging(packLogOf(rise(90, 110), times(100, 10)))).toBe(true);
    expect(isCharging(packLogOf(rise(110, 90), times(100, 10)))).toBe(false);
    expect(isCharging(packLogOf(rise(90, 110), times(100, 0)))).toBe(false);
  });
  it("may have a twentieth of its amps the other way, and no more", () => {
    const mixed = (back_A: number) => packLogOf(rise(90, 110), [...times(50, -10), ...times(50, back_A)]);
    // 500 A of 500 + 12 flow in: (500 - 12)/(500 + 12) is 0.953; with 13 it is 0.949.
    expect(isCharging(mixed(0.24))).toBe(true);
    expect(isCharging(mixed(0.26))).toBe(false);
  });
  it("is told by its first and last tenth of twenty rows and more, those without a value left out", () => {
    // It rises from the first tenth to the last, though it falls from the first row to the last.
    expect(isCharging(packLogOf([100, ...times(9, 90), ...times(81, 95), ...times(8, 99), 99], times(100, -10)))).toBe(
      true,
    );
    expect(isCharging(packLogOf(rise(90, 110, 19), times(19, -10)))).toBe(false);
    expect(isCharging(packLogOf(rise(90, 110, 20), times(20, -10)))).toBe(true);
    expect(isCharging(packLogOf([Number.NaN, ...rise(90, 110, 20)], times(21, -10)))).toBe(true);
    expect(isCharging(packLogOf([Number.NaN, ...rise(90, 110, 19)], times(20, -10)))).toBe(false);
  });
});

describe("a drive to hold against", () => {
  const log = packLogOf(rise(110, 90), times(100, 10));
  it("is 100 m and more", () => {
    expect(problemOf(() => checkDriven(100, log))).toBeUndefined();
    expect(problemOf(() => checkDriven(99.4, log))).toEqual({
      code: "no-drive",
      where: "pack.csv",
      message: "found 99 m of motion, a drive of at least 100 m is wanted",
    });
  });
  it("is not a charge, which is said with what it would show", () => {
    expect(problemOf(() => checkDriven(12, packLogOf(rise(90, 110), times(100, -10))))?.message).toBe(
      "found 12 m of motion and volts that rise while amps flow: a log of charging, a drive is wanted; for the charger's efficiency give the socket meter's reading too",
    );
  });
});

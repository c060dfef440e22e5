import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { readingRemarks } from "../../../../sim/plan/measured/readingRemarks.ts";
import type { ZeroOffset } from "../../../../sim/plan/measured/zeroOffset.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { driveOf, packLogOf, sameClock, samplesOf, times } from "./logsByHand.ts";

const job = bareJob();
// One gear: 6 over 0.3 m is 20 rad of the motor a metre.
const model = prepare(job, job.packs[0]);
const zero: ZeroOffset = { zero_A: 0, how: "unknown", off: [] };
const whole = {
  log: packLogOf(times(100, 100), times(100, 10)),
  linedUp: sameClock,
  zero,
  model,
  hasHeights: true,
  samples: samplesOf(times(100, 100), times(100, 10)),
  drive: driveOf(times(100, 10)),
  start_frac: 0.9,
};

const remarks = (changes: Partial<Parameters<typeof readingRemarks>[0]> = {}) =>
  readingRemarks({ ...whole, ...changes }).map((each) => messageIn(each, "metric"));
const clocks = (offset_s: number, how: "found" | "given" = "found") =>
  remarks({ linedUp: { ...sameClock, offset_s, how } })[0];

describe("how the clocks were laid on each other", () => {
  it("is said with the offset, the way it was found and how well it fits", () => {
    expect(clocks(0)).toBe(
      "The clocks of motion and pack agree, so that power follows the motion best (correlation 0.95).",
    );
    expect(clocks(-0.29)).toMatch(/^The clocks of motion and pack agree/);
    expect(clocks(0.31)).toMatch(/^Volts and amps are moved by \+0\.3 s, so that power/);
    expect(clocks(-7.25)).toMatch(/^Volts and amps are moved by -7\.3 s/);
    expect(clocks(5, "given")).toBe("Volts and amps are moved by +5.0 s, as given (correlation 0.95).");
  });
  it("is in minutes from a minute and a half on, and in hours from one on", () => {
    expect(clocks(89.9)).toMatch(/\+89\.9 s,/);
    expect(clocks(90)).toMatch(/\+1 min 30 s,/);
    expect(clocks(89.97)).toMatch(/\+1 min 30 s,/);
    expect(clocks(-3599)).toMatch(/-59 min 59 s,/);
    expect(clocks(3599.6)).toMatch(/\+1 h 0 min 0 s,/);
    expect(clocks(7384)).toMatch(/\+2 h 3 min 4 s,/);
  });
});

it("says which sign of the file's own amps leaves the pack", () => {
  const sign = (lined: 1 | -1, fileSign: 1 | -1) =>
    remarks({ linedUp: { ...sameClock, sign: lined }, log: { ...whole.log, fileSign } })[1];
  expect(sign(1, 1)).toBe("Amps written as positive leave the pack: the power they make rises when the car works.");
  expect(sign(-1, 1)).toMatch(/^Amps written as negative/);
  expect(sign(1, -1)).toMatch(/^Amps written as negative/);
  expect(sign(-1, -1)).toMatch(/^Amps written as positive/);
});

it("says where the zero of the amps is from", () => {
  const said = (how: ZeroOffset["how"], zero_A: number) => remarks({ zero: { how, zero_A, off: [] } })[2];
  expect(said("off", 0.8)).toBe("While the car stood switched off the amps showed 0.8 A: taken out as the zero.");
  expect(said("charging", -1.6)).toBe(
    "While the car stood, charge seemed to flow into the pack: the zero is taken to be off by -1.6 A, so that the accessories draw what the job has.",
  );
  expect(said("unknown", 0)).toBe(
    "The zero of the amps is taken as it is: the car never stood switched off in this log.",
  );
});

it("says by what the charge at the start is known", () => {
  expect(remarks()[3]).toBe("The drive began with 90 % of the charge, by its first volts.");
  expect(remarks({ log: { ...whole.log, soc_frac: Float64Array.of(0.9) } })[3]).toBe(
    "The drive began with 90 % of the charge, as the log has it.",
  );
});

describe("what is said only where it is so", () => {
  it("is nothing more of a log that is whole, dense and has heights", () => {
    expect(remarks()).toHaveLength(4);
  });
  it("is what the reader had to do", () => {
    expect(remarks({ log: { ...whole.log, remarks: ["Times were spread."] } })[4]).toBe("Times were spread.");
  });
  it("is that samples are more than two and a half seconds apart", () => {
    expect(remarks({ samples: { ...whole.samples, interval_s: 2.5 } })).toHaveLength(4);
    expect(remarks({ samples: { ...whole.samples, interval_s: 2.6 } })[4]).toBe(
      "Volts and amps come every 2.6 s: each is compared with the prediction at its own moment, and the bands are wider for what lies between.",
    );
  });
  it("is that they cover less than 97 % of the drive", () => {
    expect(remarks({ samples: { ...whole.samples, cover_frac: 0.97 } })).toHaveLength(4);
    expect(remarks({ samples: { ...whole.samples, cover_frac: 0.96 } })[4]).toBe(
      "Volts and amps cover 96 % of the drive; the rest is left out of both sides.",
    );
  });
  it("is that heights are missing", () => {
    expect(remarks({ hasHeights: false })[4]).toBe(
      "The log has no heights: the road counts as level, and hills are in the differences.",
    );
  });
});

describe("motor speed over road speed", () => {
  const geared = (radpm: readonly number[], changes: { offset_s?: number; speed_mps?: number } = {}) => {
    const { offset_s = 0, speed_mps = 10 } = changes;
    const motor_radps = Float64Array.from(radpm, (each) => each * 10);
    const count = radpm.length;
    const log = packLogOf(times(count, 100), times(count, 10), { motor_radps });
    return remarks({
      log,
      linedUp: { ...sameClock, offset_s },
      drive: driveOf(times(100, speed_mps)),
      samples: samplesOf(times(count, 100), times(count, 10)),
    }).slice(4);
  };
  const OTHER =
    "Motor speed over road speed is mostly 30.0 rad/s a m/s, and no gear the job uses has that (only 20.0): another gear was driven, or another final drive or tyre is fitted.";
  it("says nothing where it is within 6 % of a gear of the job for most of the drive", () => {
    expect(geared(times(40, 20))).toEqual([]);
    expect(geared(times(40, 21.19))).toEqual([]);
    expect(geared(times(40, -20))).toEqual([]);
    expect(geared([...times(25, 20), ...times(15, 30)])).toEqual([]);
  });
  it("is said where it is that of no gear for four tenths of it or more", () => {
    expect(geared(times(40, 30))).toEqual([OTHER]);
    expect(geared(times(40, 21.21))).toHaveLength(1);
    expect(geared(times(40, 18.79))).toHaveLength(1);
    expect(geared([...times(24, 20), ...times(16, 30)])).toHaveLength(1);
    expect(geared([...times(15, 20), ...times(10, 28), ...times(15, 30)])[0]).toMatch(/mostly 28\.0 rad/);
  });
  it("wants thirty readings above 15 km/h at which the motor turned and the drive is known", () => {
    expect(geared(times(30, 30))).toHaveLength(1);
    expect(geared(times(29, 30))).toEqual([]);
    expect(geared([...times(29, 30), 0])).toEqual([]);
    expect(geared(times(40, 30), { speed_mps: 4.1 })).toEqual([]);
    expect(geared(times(40, 30), { speed_mps: 4.2 })).toHaveLength(1);
    // The drive ends after 100 s: 70 s later than that the log meets thirty of its seconds, 72 s later fewer.
    expect(geared(times(40, 30), { offset_s: 70 })).toHaveLength(1);
    expect(geared(times(40, 30), { offset_s: 72 })).toEqual([]);
  });
});

it("says where the pack worked and no motion is beside it", () => {
  // 100 V and 100 A are 10 kW, for the 199 s between 200 samples, of which the drive has a hundred.
  const log = packLogOf(times(200, 100), times(200, 100));
  const seen = (amps: number) => samplesOf(times(100, 100), times(100, amps));
  const said = (changes: Partial<Parameters<typeof readingRemarks>[0]>) =>
    remarks(changes).filter((each) => each.startsWith("The pack worked"));
  expect(said({ log, samples: seen(100) })).toEqual([
    "The pack worked for 99 s more without any motion beside it: motion was not logged then, or its clock jumped. Those times are left out of both sides.",
  ]);
  expect(said({ log: packLogOf(times(110, 100), times(110, 100)), samples: seen(100) })).toEqual([]);
  // 4.9 kW is a heater.
  expect(said({ log: packLogOf(times(200, 100), times(200, 49)), samples: seen(49) })).toEqual([]);
});

import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { chargerFromLog } from "../../../../sim/plan/measured/chargerFromLog.ts";
import type { PackLog } from "../../../../sim/trace/packLog.ts";
import { packLogOf, times } from "./logsByHand.ts";

/** Ten hours at 100 V and 10 A, a row every hundred seconds: 10 kWh into the pack. */
const rows = 361;
const everyHundred = Float64Array.from({ length: rows }, (_, i) => 100 * i);
const tenKwh = packLogOf(times(rows, 100), times(rows, -10), { time_s: everyHundred });

const found = (socket_kWh: number, promised_frac = 0.9, log: PackLog = tenKwh) =>
  chargerFromLog(log, socket_kWh, promised_frac);
const words = (...of: Parameters<typeof found>) => messageIn(found(...of).sentence, "metric");

function problemOf(socket_kWh: number) {
  try {
    found(socket_kWh);
  } catch (error) {
    if (error instanceof InputError) return error.problems[0];
  }
  return undefined;
}

describe("what reached the pack", () => {
  it("is volts times amps over time, whichever sign the amps have", () => {
    expect(found(12.5).pack_kWh).toBeCloseTo(10, 9);
    const turned = packLogOf(times(rows, 100), times(rows, 10), { time_s: everyHundred });
    expect(found(12.5, 0.9, turned).pack_kWh).toBeCloseTo(10, 9);
  });
  it("is by straight lines of power between rows", () => {
    // 100 V, 0 to 20 A and back, 100 s each way: 1000 W on average over 200 s.
    const log = packLogOf([100, 100, 100], [0, 20, 0], { time_s: Float64Array.of(0, 100, 200) });
    expect(found(200_000 / 3.6e6, 0.9, log).pack_kWh).toBeCloseTo(200_000 / 3.6e6, 12);
  });
  it("has nothing of a row without a value, and goes on over it", () => {
    const log = packLogOf([100, 100, 100], [10, Number.NaN, 10], { time_s: Float64Array.of(0, 50, 100) });
    expect(found(0.03, 0.9, log).pack_kWh).toBeCloseTo(100_000 / 3.6e6, 12);
  });
  it("has nothing of a logger silent for more than two minutes", () => {
    const two = (end_s: number) => packLogOf(times(3, 100), times(3, 10), { time_s: Float64Array.of(0, 100, end_s) });
    expect(found(0.07, 0.9, two(220)).pack_kWh).toBeCloseTo(220_000 / 3.6e6, 12);
    expect(found(0.03, 0.9, two(221)).pack_kWh).toBeCloseTo(100_000 / 3.6e6, 12);
  });
});

describe("the charger's efficiency", () => {
  it("is what reached the pack over what the meter counted, two meters of 1 % its band", () => {
    const { efficiency_frac } = found(12.5);
    expect(efficiency_frac.value).toBeCloseTo(0.8, 9);
    // 1 % and 1 % as squares: 1.414 %.
    expect(efficiency_frac.low).toBeCloseTo(0.8 * (1 - Math.SQRT2 / 100), 9);
    expect(efficiency_frac.high).toBeCloseTo(0.8 * (1 + Math.SQRT2 / 100), 9);
  });
  it("is never above 1, though the meters may read so within what they are off", () => {
    expect(found(9.9).efficiency_frac.high).toBe(1);
    expect(found(10 / 1.019).efficiency_frac.value).toBeCloseTo(1.019, 9);
  });
  it("is less than in the job, as in it, or more, by its band", () => {
    expect(words(12.5)).toBe(
      "10 kWh of 12.5 kWh from the socket reached the pack: the charger passes 80 % on (79 % to 81 %), less than in the job, which has 90 %.",
    );
    // 0.8 (1 - 0.01414) = 0.7887 and 0.8 (1 + 0.01414) = 0.8113.
    expect(words(12.5, 0.812)).toMatch(/, less than in the job,/);
    expect(words(12.5, 0.811)).toMatch(/, as in the job,/);
    expect(words(12.5, 0.789)).toMatch(/, as in the job,/);
    expect(words(12.5, 0.788)).toMatch(/, more than in the job,/);
  });
});

describe("what cannot be", () => {
  it("is more into the pack than from the socket, by more than 2 %", () => {
    expect(problemOf(10 / 1.019)).toBeUndefined();
    expect(problemOf(9.8)).toEqual({
      code: "socket-less",
      where: "pack.csv",
      message:
        "found 10.0 kWh into the pack and 9.8 kWh from the socket: more than went in; is the meter's reading that of this charge?",
    });
  });
  it("is less than three tenths of it", () => {
    expect(problemOf(10 / 0.301)).toBeUndefined();
    expect(problemOf(10 / 0.299)?.code).toBe("socket-more");
    expect(problemOf(50)?.message).toBe(
      "found 10.0 kWh into the pack of 50 kWh from the socket: the log holds only a part of the charge, or the meter's reading is of more than this one",
    );
  });
});

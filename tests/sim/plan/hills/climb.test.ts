import { describe, expect, it } from "vitest";
import { climbHill, ratingVerdict } from "../../../../sim/plan/hills/climb.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** 3-4-5 of a fifth: sine 0.28, cosine 0.96; 1400 kg without any resistance need 3845.5 N. */
const GRADE_ratio = 7 / 24;
const force_N = 1400 * 9.81 * 0.28;
const climbed = (changes: Changes, speed_mps = 5, length_m = 600) => {
  const job = bareJob(changes);
  return climbHill(job, prepare(job, job.packs[0]), { grade_ratio: GRADE_ratio, length_m }, speed_mps);
};
const heat = { capacity_kJpK: 40, cooling_WpK: 0, derateFrom_degC: 240, derateTo_degC: 250 };

describe("a hill at a steady speed", () => {
  it("takes its length over the speed, at the power of its force", () => {
    const climb = climbed({});
    expect(climb).toMatchObject({ speed_mps: 5, duration_s: 120 });
    expect(climb.shaft_kW).toBeCloseTo((force_N * 5) / 1000, 9);
    expect(climb.energy_kWh).toBeCloseTo((force_N * 600) / 3.6e6, 6);
    expect(climb.slowsAfter_m).toBeUndefined();
  });

  it("warms the motor by what it loses, where something is known of its heat", () => {
    expect(climbed({}).motorTop_degC).toBeUndefined();
    // Of 80 % a quarter of the shaft's power is lost, 4807 W for 120 s, over 40 kJ/K.
    const motor = { loss: { kind: "flat" as const, efficiency_frac: 0.8 }, heat };
    expect(climbed({ motor }).motorTop_degC).toBeCloseTo(20 + (0.25 * force_N * 600) / 40_000, 6);
  });

  it("has the maker's verdict where there is a rating", () => {
    expect(climbed({}).rating).toBeUndefined();
    expect(climbed({ motor: { rating: { continuous_kW: 19 } } }).rating).toBe("tooMuch");
    expect(climbed({ motor: { rating: { continuous_kW: 20 } } }).rating).toBe("holds");
  });

  it("says where a car too weak for it has lost a tenth of its speed", () => {
    // 180 Nm are 3600 N: 245.5 N too few slow it by 0.1754 m/s², from 5 to 4.5 m/s over (25 - 20.25) / (2 x 0.1754) = 13.54 m.
    const weak = { motor: { envelope: { kind: "peak" as const, torque_Nm: 180, power_kW: 2000 } } };
    const { slowsAfter_m = Number.NaN } = climbed(weak);
    const after_m = (5 ** 2 - 4.5 ** 2) / ((2 * (force_N - 3600)) / 1400);
    // At the end of the 400th part of the 120 s in which it does.
    expect(slowsAfter_m).toBeGreaterThanOrEqual(after_m);
    expect(slowsAfter_m).toBeLessThan(after_m + 5 * 0.3);
  });
});

describe("the maker's rating", () => {
  it("holds up to and with its own figures", () => {
    const rating = { continuous_kW: 18, peak_kW: 25, peak_s: 300 };
    expect(ratingVerdict(rating, 18, 9999)).toBe("holds");
    expect(ratingVerdict(rating, 25, 300)).toBe("holdsShort");
  });
});

import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { regenAdvice } from "../../../../sim/plan/regen/regenAdvice.ts";
import type { RegenRow } from "../../../../sim/plan/regen/regenSweep.ts";

/** A setting that returns so much, with nothing against it. */
const row = (torque_Nm: number, returned_frac: number, changes: Partial<RegenRow> = {}): RegenRow => ({
  torque_Nm,
  returned_frac,
  battery_Whpkm: 150,
  regen_Wh: 100,
  range_km: 80,
  charge_A: 50,
  chargeLimit_A: 100,
  slowing_mps2: 0.6,
  fullPack_mps2: 0.1,
  coldPack_mps2: 0.3,
  lamps: "off",
  neededGrip_coeff: 0.2,
  ...changes,
});
const words = (rows: readonly RegenRow[]) => regenAdvice(rows).words.map((each) => messageIn(each, "metric"));
const chosen = (...rows: readonly RegenRow[]) => regenAdvice(rows).recommended?.torque_Nm;

describe("the setting to begin with", () => {
  it("is the gentlest that returns all but a hundredth of what the hardest does", () => {
    expect(chosen(row(0, 0), row(20, 0.101), row(40, 0.11))).toBe(20);
    expect(chosen(row(0, 0), row(20, 0.099), row(40, 0.11))).toBe(40);
    expect(chosen(row(0, 0.001), row(40, 0.0101))).toBe(0);
  });
  it("is none with a fault, and what those return does not count", () => {
    const fault = { slowing_mps2: 1.31 };
    expect(chosen(row(20, 0.1), row(40, 0.2, fault))).toBe(20);
    expect(chosen(row(20, 0.1, fault))).toBeUndefined();
    expect(words([row(20, 0.1, fault)])[0]).toBe("None of these settings is free of what follows.");
  });
  it("is said with what it returns and how it slows, and whether the lamps may light", () => {
    expect(words([row(20, 0.123)])[0]).toBe(
      "Begin with 20 Nm: it returns 12 % of what driving takes, and slows the car by 0.6 m/s2 with the foot off.",
    );
    expect(words([row(20, 0.123, { lamps: "may light" })])[0]).toMatch(
      / with the foot off\. The brake lamps may light at that: wire them to it, by the local rule\.$/,
    );
    expect(words([row(0, 0), row(20, 0.005)])[0]).toBe(
      "Braking by the motor returns next to nothing on this road: it may stay off.",
    );
  });
});

describe("what is against a setting", () => {
  const against = (changes: Partial<RegenRow>) => words([row(40, 0.1, changes)]).slice(1, -2);
  it("is more friction than a wet road may give", () => {
    expect(against({ neededGrip_coeff: 0.4 })).toEqual([]);
    expect(against({ neededGrip_coeff: 0.456 })).toEqual([
      "40 Nm: needs a friction of 0.46 at the driven axle, and a wet road may give 0.4: the axle may slide.",
    ]);
    const { neededGrip_coeff: _, ...unknown } = row(40, 0.1);
    expect(words([unknown])).toHaveLength(3);
  });
  it("is a current that the pack does not take, where it takes any", () => {
    expect(against({ charge_A: 99.8 })).toEqual([]);
    expect(against({ charge_A: 99.9 })).toEqual(["40 Nm: the pack takes no more than 100 A, which this road reaches."]);
    expect(against({ charge_A: 0, chargeLimit_A: 0 })).toEqual([]);
    expect(against({ charge_A: 0.5, chargeLimit_A: 0.5 })).toHaveLength(1);
  });
  it("is slowing at which the brake lamps must light", () => {
    expect(against({ slowing_mps2: 1.3 })).toEqual([]);
    expect(against({ slowing_mps2: 1.36 })).toEqual([
      "40 Nm: slows the car by 1.4 m/s2, at which the brake lamps must light.",
    ]);
  });
});

it("ends with what a driver must be told of the hardest setting, and with nothing of no settings", () => {
  const all = words([row(20, 0.1), row(40, 0.12, { slowing_mps2: 0.9, fullPack_mps2: 0.14, coldPack_mps2: 0.26 })]);
  expect(all.at(-2)).toMatch(
    /^With a full pack the hardest setting slows the car by 0\.1 m\/s2 instead of 0\.9, with cells at 0 °C by 0\.3: /,
  );
  expect(words([])).toEqual(["None of these settings is free of what follows."]);
});

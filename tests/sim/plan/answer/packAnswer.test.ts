import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { endsIn, packAnswer, roadEnds, whyNot } from "../../../../sim/plan/answer/packAnswer.ts";
import type { ConditionDrive } from "../../../../sim/plan/conditions/driveConditions.ts";
import type { Candidate, Finding } from "../../../../sim/plan/driveReport.ts";
import { inventedCandidate, inventedUnknown, inventedUse } from "../../../support/inventedCandidate.ts";

// 100 km today, 50 in winter, 25 at ten years in winter; a usual day of 10 km.
const use = inventedUse();
const ten = inventedCandidate(10);
const finding = (kind: string): Finding => ({ kind, weight: "warning", sentence: [kind] });
const stands = {
  distance_km: 0,
  grade_ratio: 0,
  gear: "3",
  needed_Nm: 41,
  available_Nm: 30,
  limit: "motor" as const,
};

describe("of one pack", () => {
  it("range and what is left of it stand in the three conditions, without a band before one is driven", () => {
    expect(packAnswer(use, 0, ten, undefined)).toEqual({
      name: "10 kWh",
      mass_kg: 100,
      testMass_kg: 900,
      usable_kWh: 10,
      isAtLeast: false,
      unmet: [],
      mayFail: [],
      range: { new: flat(100), winter: flat(50), tenYearsWinter: flat(25) },
      left: { new: flat(90), winter: flat(40), tenYearsWinter: flat(15) },
    });
  });
  it("the longest day stands beside them where there is one", () => {
    const { longest } = packAnswer({ ...use, longestDay_km: 40 }, 0, ten, undefined);
    expect(longest).toEqual({ new: flat(60), winter: flat(10), tenYearsWinter: flat(-15) });
  });
  it("unknowns make the band in each condition, and name the ends at which the car may fail", () => {
    const low = inventedUnknown(100, 0, 30, { path: "a", failsAtLow: true });
    const both = inventedUnknown(100, 0, 0, { path: "b", failsAtLow: true, failsAtHigh: true });
    const { range, mayFail } = packAnswer(use, 0, ten, [low, both]);
    expect(range?.new).toEqual({ value: 100, low: 70, high: 100 });
    expect(range?.tenYearsWinter).toEqual({ value: 25, low: 17.5, high: 25 });
    expect(mayFail).toEqual([
      { path: "a", value: 0.9 },
      { path: "b", value: 0.9 },
      { path: "b", value: 1.1 },
    ]);
  });
  it("what else was asked and is not met stands in words", () => {
    const findings = [finding("hillTooSteep"), finding("hillStarts"), finding("tooSlow"), finding("topSpeedHeld")];
    expect(packAnswer(use, 0, { ...ten, findings }, undefined).unmet).toEqual([["hillTooSteep"], ["tooSlow"]]);
  });
  it("a range that the clock ended is at least that", () => {
    expect(packAnswer(use, 0, { ...ten, rangeEnd: "time" }, undefined).isAtLeast).toBe(true);
  });
  it("that may not be used has a reason and no kilometres", () => {
    const above = { ...ten, pack: { ...ten.pack, max_V: 999 } };
    const found = packAnswer(use, 0, above, []);
    expect(found.stop?.kind).toBe("packAboveController");
    expect(found).not.toHaveProperty("range");
    expect(found.isAtLeast).toBe(false);
  });
});

describe("at the ends of an unknown", () => {
  it("the range goes into each condition by what is allowed there", () => {
    const unknown = inventedUnknown(100, 20, 40);
    expect(endsIn("new", use, ten, [unknown])).toEqual([{ atLow: 120, atHigh: 60 }]);
    expect(endsIn("tenYearsWinter", use, ten, [unknown])).toEqual([{ atLow: 30, atHigh: 15 }]);
  });
  it("an end at which the car does not drive is the range as taken", () => {
    const unknown = inventedUnknown(100, 20, 40, { failsAtLow: true });
    expect(endsIn("new", use, ten, [unknown])).toEqual([{ atLow: 100, atHigh: 60 }]);
    expect(endsIn("new", use, ten, [{ ...unknown, failsAtLow: false, failsAtHigh: true }])).toEqual([
      { atLow: 120, atHigh: 100 },
    ]);
  });
  it("of what is allowed for winter or age, the allowance is that end itself", () => {
    const winter = inventedUnknown(100, 0, 0, { path: "allowance.winter_ratio", low: 1.6, high: 2.5 });
    const aged = inventedUnknown(100, 0, 0, { path: "allowance.aged_frac", low: 0.4, high: 0.6 });
    expect(endsIn("winter", use, ten, [winter, aged])).toEqual([
      { atLow: 62.5, atHigh: 40 },
      { atLow: 50, atHigh: 50 },
    ]);
    expect(endsIn("tenYearsWinter", use, ten, [winter, aged])).toEqual([
      { atLow: 31.25, atHigh: 20 },
      { atLow: 20, atHigh: 30 },
    ]);
  });
  it("a road that may take more energy makes the range shorter by as much", () => {
    const open = { ...ten, roadEnergy_ratio: { low: 0.8, high: 1.25 } };
    expect(roadEnds("winter", use, open)).toEqual([{ atLow: 62.5, atHigh: 40 }]);
    expect(roadEnds("winter", use, ten)).toEqual([]);
  });
});

/** A drive in winter that goes so far, and all of its road. */
function winterDrive(range_km: number, changes: Partial<ConditionDrive> = {}): ConditionDrive {
  return {
    name: "winter",
    range_km,
    rangeEnd: "floor",
    battery_Whpkm: 100,
    perMetre_J: 360,
    heater_kW: 0,
    missed_frac: 0,
    isStuck: false,
    pack_degC: 20,
    fuel_l100km: 0,
    ...changes,
  };
}
const inWinter = (winter: ConditionDrive, tenYearsWinter: ConditionDrive): Candidate => ({
  ...ten,
  conditions: { winter, tenYearsWinter, others: [] },
});

describe("at the ends of an unknown in a driven winter", () => {
  // 60 km new and 40 km at ten years, which an unknown makes 44 or 30: of the new pack the same shares, 66 and 45.
  const driven = inWinter(winterDrive(60), winterDrive(40));
  const ends = { atLow_km: 44, atHigh_km: 30 };
  const unknown = (path: string) => inventedUnknown(100, 20, 40, { path, tenYearsWinter: ends });
  it("the range at ten years is as driven, and a new pack's moves by the same share", () => {
    expect(endsIn("tenYearsWinter", use, driven, [unknown("a")])).toEqual([{ atLow: 44, atHigh: 30 }]);
    expect(endsIn("winter", use, driven, [unknown("a")])).toEqual([{ atLow: 66, atHigh: 45 }]);
    expect(endsIn("new", use, driven, [unknown("a")])).toEqual([{ atLow: 120, atHigh: 60 }]);
  });
  it("a new pack's does not move by what age makes of it", () => {
    for (const path of ["allowance.aged_frac", "conditions.old.resistance_ratio"])
      expect(endsIn("winter", use, driven, [unknown(path)])).toEqual([{ atLow: 60, atHigh: 60 }]);
  });
  it("goes by the factors where the old pack was not driven, or did not move", () => {
    const { tenYearsWinter: _, ...plain } = unknown("a");
    expect(endsIn("tenYearsWinter", use, ten, [plain])).toEqual([{ atLow: 30, atHigh: 15 }]);
    expect(endsIn("winter", use, inWinter(winterDrive(60), winterDrive(0)), [unknown("a")])).toEqual([
      { atLow: 60, atHigh: 30 },
    ]);
  });
});

describe("a condition in which the car first fails", () => {
  const failsIn = (winter: Partial<ConditionDrive>, old: Partial<ConditionDrive> = {}) => {
    const found = packAnswer(use, 0, inWinter(winterDrive(60, winter), winterDrive(40, old)), undefined).failsIn;
    return found && [found.condition, messageIn(found.why, "metric")];
  };
  it("is none where it misses a fiftieth at most", () => {
    expect(failsIn({ missed_frac: 0.02 }, { missed_frac: 0.02 })).toBeUndefined();
    expect(packAnswer(use, 0, ten, undefined).failsIn).toBeUndefined();
  });
  it("is where it comes to a stand, or misses more, the milder condition first", () => {
    expect(failsIn({}, { isStuck: true })).toEqual([
      "tenYearsWinter",
      "In the condition “ten years, winter” the car comes to a stand on this road.",
    ]);
    expect(failsIn({ missed_frac: 0.03 }, { isStuck: true })).toEqual([
      "winter",
      "In the condition “winter” the car does not keep up with this road: 3 % of it is missed.",
    ]);
  });
});

describe("why a car does not drive the road", () => {
  const why = (changes: Partial<Candidate>) => {
    const found = whyNot(inventedCandidate(10, changes));
    return found && [messageIn(found.why, "metric"), found.hasRange];
  };

  it("is nothing where it keeps up, misses a fiftieth at most, or was empty first", () => {
    expect(why({})).toBeUndefined();
    expect(why({ distance_km: 4.9, missed_km: 0.1 })).toBeUndefined();
    expect(why({ missed_km: 4, reachedFloor: true })).toBeUndefined();
    expect(why({ distance_km: 0, missed_km: 0 })).toBeUndefined();
  });
  it("is that it does not keep up, with its range all the same, where it misses more", () => {
    expect(why({ distance_km: 4.85, missed_km: 0.15 })).toEqual([
      "The car does not keep up with this road: 3 % of it is missed.",
      true,
    ]);
  });
  it("is that it stands, is too slow or draws nothing, and then there is no range", () => {
    expect(why({ stands, findings: [finding("traceNotFollowed"), finding("doesNotStart")] })).toEqual([
      "doesNotStart",
      false,
    ]);
    expect(why({ rangeEnd: "stuck", distance_km: 2, missed_km: 2.1, findings: [finding("stuck")] })).toEqual([
      "stuck",
      false,
    ]);
    expect(why({ rangeEnd: "endless", findings: [finding("noRange")] })).toEqual(["noRange", false]);
    expect(why({ rangeEnd: "endless" })).toEqual(["The car does not drive this road.", false]);
  });
  it("is not that it was slow only later in the day", () => {
    expect(why({ rangeEnd: "stuck", distance_km: 5, missed_km: 0 })).toBeUndefined();
    expect(why({ rangeEnd: "stuck", distance_km: 2, missed_km: 2 })?.[1]).toBe(true);
  });
});

function flat(value: number) {
  return { value, low: value, high: value };
}

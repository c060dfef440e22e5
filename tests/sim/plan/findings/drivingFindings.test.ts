import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { Candidate, Stands } from "../../../../sim/plan/driveReport.ts";
import { drivingFindings, isCannot } from "../../../../sim/plan/findings/drivingFindings.ts";
import type { Range } from "../../../../sim/plan/going/range.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

const range: Range = { distance_m: 50_000, end: "floor", isThereAndBack: false, rise_m: 0 };
function said(changes: Partial<Candidate>, of: Partial<Range> = {}) {
  const found = drivingFindings(inventedCandidate(10, changes), { ...range, ...of });
  return found.map(({ kind, weight, sentence }) => [kind, weight, messageIn(sentence, "metric")]);
}
const limited = (changes: Partial<Candidate["limited_s"]>) => ({ ...inventedCandidate(10).limited_s, ...changes });
const stands: Stands = {
  distance_km: 0,
  grade_ratio: 0.1,
  gear: "third",
  needed_Nm: 41.26,
  available_Nm: 30,
  limit: "motor",
};

it("says nothing of a car that keeps up with its road and meets no limit", () => expect(said({})).toEqual([]));

describe("a car that stands", () => {
  const sentence = (changes: Partial<Stands>, missed_km = 2.5) =>
    said({ stands: { ...stands, ...changes }, missed_km })[0];

  it("at the very beginning does not start: gradient, torques and what bounds them", () => {
    expect(sentence({})).toEqual([
      "doesNotStart",
      "warning",
      "The car does not start on this road on a gradient of 10 %: it needs 41 Nm at the motor in third gear and has 30 Nm, limited by the motor.",
    ]);
  });
  it("on as good as the level has no gradient, uphill or downhill", () => {
    for (const grade_ratio of [0.0049, -0.0049]) expect(sentence({ grade_ratio })[2]).toMatch(/on this road: it needs/);
    for (const grade_ratio of [0.005, -0.005])
      expect(sentence({ grade_ratio })[2]).toMatch(/on a gradient of -?0\.5 %:/);
  });
  it("further on stops there, with the road that is left", () => {
    expect(sentence({ distance_km: 0.42, limit: "none" })).toEqual([
      "stopsOnRoad",
      "warning",
      "The car stops after 420 m on a gradient of 10 % and does not start again: it needs 41 Nm at the motor in third gear and has 30 Nm. 2.5 km of the road are left.",
    ]);
  });
  it("has its torques in as many digits as tell them apart, two at least", () => {
    const torques = (needed_Nm: number, available_Nm: number) =>
      /needs (.*) at the motor in third gear and has (.*), limited/
        .exec(String(sentence({ needed_Nm, available_Nm })[2]))
        ?.slice(1);
    expect(torques(41.26, 41.14)).toEqual(["41.3 Nm", "41.1 Nm"]);
    expect(torques(141.26, 141.28)).toEqual(["141.26 Nm", "141.28 Nm"]);
    expect(torques(3.26, 2.94)).toEqual(["3.3 Nm", "2.9 Nm"]);
    expect(torques(1412, 1399)).toEqual(["1412 Nm", "1399 Nm"]);
    expect(torques(41.260_02, 41.260_01)).toEqual(["41.26 Nm", "41.26 Nm"]);
  });
  it("is held by what its driveline may carry, or by its controller", () => {
    expect(sentence({ limit: "driveline" })[2]).toContain("limited by what the driveline may carry.");
    expect(sentence({ limit: "controller" })[2]).toContain("limited by the controller.");
    expect(sentence({ limit: "grip" })[2]).toContain("limited by the tyres' grip.");
  });
  it("is what comes before everything else, and nothing else is", () => {
    expect(["doesNotStart", "stopsOnRoad", "stuck", "reachedFloor"].map(isCannot)).toEqual([true, true, false, false]);
  });
});

it("says of a pack that is empty on the way how far it got and what is left, and not that the car stands", () => {
  expect(said({ reachedFloor: true, distance_km: 12.34, missed_km: 0.8, stands })).toEqual([
    ["reachedFloor", "warning", "Empty on the way: the pack is empty after 12.3 km, 800 m of the road are left."],
  ]);
});

describe("a car that falls behind", () => {
  it("is told with what held it back, the longest first", () => {
    expect(said({ behind_s: 86, missed_km: 0.31, limited_s: limited({ grip: 5, motor: 70, pack: 22 }) })).toEqual([
      [
        "traceNotFollowed",
        "warning",
        "Falls behind for 86 s (more than 2 km/h too slow), 310 m missed; held back by the motor for 70 s, the pack for 22 s, the tyres' grip for 5 s.",
      ],
    ]);
    expect(said({ behind_s: 0.5, limited_s: limited({ heat: 3 }) })[0][0]).toBe("traceNotFollowed");
  });
  it("for moments only is told as a note, with each limit that it met", () => {
    expect(said({ limited_s: limited({ driveline: 0.5, heat: 3, controller: 1 }) })).toEqual([
      [
        "touchedLimit",
        "note",
        "The car keeps up with the road; limits were met for moments: heat 3 s, the controller's limits 1 s, the driveline's torque limit 0.5 s.",
      ],
    ]);
  });
  it("so far that no range is counted is told apart from one that is slow only later", () => {
    expect(said({ rangeEnd: "stuck", distance_km: 1.9, missed_km: 2 })[0]).toEqual([
      "stuck",
      "warning",
      "Too slow for this road: in the time it allows, the car covers 1.9 km of 3.9 km. No range is counted beyond that.",
    ]);
    expect(said({ rangeEnd: "stuck", distance_km: 2, missed_km: 2 })[0][2]).toMatch(
      /^Driven over and over, the car later/,
    );
  });
});

it("says how much the pack could not feed the accessories", () => {
  expect(said({ shed_Wh: 0.5 })).toEqual([
    ["shedAccessories", "warning", "The pack could not feed the accessories all the time; 0.5 Wh were shed."],
  ]);
});

describe("of the range", () => {
  it("says that there is none on a road that draws nothing", () => {
    expect(said({}, { end: "endless" })[0].slice(0, 2)).toEqual(["noRange", "warning"]);
  });
  it("says why the road is driven there and back: it ends above its start, or below", () => {
    const words = (rise_m: number) => said({}, { isThereAndBack: true, rise_m })[0];
    expect(words(123)).toEqual([
      "thereAndBack",
      "note",
      "This road ends 120 m above its start, so for the range it is driven there and back.",
    ]);
    expect(words(-87)[2]).toBe("This road ends 87 m below its start, so for the range it is driven there and back.");
  });
});

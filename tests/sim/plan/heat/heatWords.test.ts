import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { HeatCourse, HeatStudy } from "../../../../sim/plan/heat/heatStudy.ts";
import { heatFaults, heatWords } from "../../../../sim/plan/heat/heatWords.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

const heat = { capacity_kJpK: 40, cooling_WpK: 5, derateFrom_degC: 120, derateTo_degC: 150 };
const known: Changes = { motor: { heat, rating: { continuous_kW: 20, peak_kW: 50, peak_s: 60 } }, module: { heat } };
const courseOf = (name: "road" | "hill", changes: Partial<HeatCourse> = {}): HeatCourse => ({
  name,
  times: 5,
  isEmpty: false,
  motor_degC: 80.4,
  pack_degC: 41.6,
  heldBack_s: 0,
  behind_s: 0,
  continuous_kW: 12,
  peak_kW: 40,
  continuousRating: "holds",
  peakRating: "holdsShort",
  ...changes,
});
function studyOf(course: Partial<HeatCourse> = {}, isAssumed = false): HeatStudy {
  return {
    hot_degC: 35,
    hill: { grade_ratio: 0.06, length_km: 8, speed_kmh: 50, isAssumed },
    isClimbed: true,
    courses: [courseOf("road", course), courseOf("hill", course)],
  };
}
const said = (study = studyOf(), changes = known) =>
  heatWords(bareJob(changes), study).map((each) => messageIn(each, "metric"));

describe("a hot day in words", () => {
  it("is the road, the long hill, and what the maker's rating says of both", () => {
    expect(said()).toEqual([
      "On a day of 35 °C this road takes the motor to 80 °C, which gives less from 120 °C on; the pack to 42 °C, which gives less from 120 °C on: heat does not hold the car back.",
      "The long hill, 8 km at 6 %, up at 50 km/h and down again 5 times, takes the motor to 80 °C and the pack to 42 °C: heat does not hold the car back.",
      "On the road its hardest half hour asks 12 kW of the motor, rated by its maker at 20 kW continuous: within it; its hardest 60 s 40 kW of 50 kW: within it.",
      "On the long hill its hardest half hour asks 12 kW of the motor, rated by its maker at 20 kW continuous: within it; its hardest 60 s 40 kW of 50 kW: within it.",
    ]);
  });
  it("says how often the hill was climbed before the pack was empty, and that it is assumed", () => {
    const hill = (times: number) => said(studyOf({ times, isEmpty: true }))[1];
    expect(hill(1)).toMatch(/ and down again until the pack is empty, the first time, takes/);
    expect(hill(3)).toMatch(/the third time,/);
    expect(hill(6)).toMatch(/the 6th time,/);
    expect(said(studyOf({}, true))[1]).toMatch(/8 km at 6 % \(assumed: name the client's own\), up/);
  });
  it("says of a hill that is not climbed just that, unless heat is what holds the car back there", () => {
    expect(said({ ...studyOf(), isClimbed: false }).slice(1, 2)).toEqual([
      "The car does not climb the long hill, 8 km at 6 %, in the gears used: what that would do to motor and pack is not known.",
    ]);
    expect(said({ ...studyOf(), isClimbed: false }).filter((each) => each.startsWith("On the long hill"))).toEqual([]);
    expect(said({ ...studyOf({ heldBack_s: 90 }), isClimbed: false })[1]).toMatch(
      /: heat holds the car back for 90 s\.$/,
    );
  });
  it("has only what is known of the heat, and says where that is nothing", () => {
    const motorOnly = said(studyOf(), { motor: known.motor ?? {} });
    expect(motorOnly[0]).toMatch(/takes the motor to 80 °C, which gives less from 120 °C on: heat/);
    expect(motorOnly.at(-1)).toBe("Not known: how the modules warm.");
    const packOnly = said(studyOf(), { module: { heat } });
    expect(packOnly[1]).toMatch(/5 times, takes the pack to 42 °C: heat/);
    expect(said(studyOf(), {})[0]).toBe(
      "On a day of 35 °C this road heats nothing of which it is known how it warms: heat does not hold the car back.",
    );
    const { motor_degC: _, pack_degC: __, ...neither } = courseOf("road");
    const bare = { ...studyOf(), courses: [neither] };
    expect(said(bare)[0]).toMatch(/this road heats nothing of which/);
  });
  it("says for how long heat holds the car back, or that it is behind for other reasons, from a second on", () => {
    expect(said(studyOf({ heldBack_s: 1 }))[0]).toMatch(/: heat holds the car back for 1 s\.$/);
    expect(said(studyOf({ heldBack_s: 0.9 }))[0]).toMatch(/: heat does not hold the car back\.$/);
    expect(said(studyOf({ behind_s: 1 }))[0]).toMatch(
      / back\. It falls behind for 1 s, for other reasons than heat\.$/,
    );
    expect(said(studyOf({ behind_s: 0.9 }))[0]).toMatch(/ back\.$/);
    expect(said(studyOf({ heldBack_s: 90, behind_s: 90 }))[0]).toMatch(/: heat holds the car back for 90 s\.$/);
  });
  it("says for whoever reads no further where heat holds it back, on which day and for how long", () => {
    const faults = (course: Partial<HeatCourse>) =>
      heatFaults(bareJob(known), studyOf(course)).map((each) => messageIn(each, "metric"));
    expect(faults({ heldBack_s: 47.36 })).toEqual([
      "Heat holds the car back on this road on a day of 35 °C, for 47 s.",
      "Heat holds the car back on the long hill on a day of 35 °C, for 47 s.",
    ]);
    expect(faults({ heldBack_s: 0.9 })).toEqual([]);
  });
  it("says what is more than the maker rates, for as long as asked and for its peak", () => {
    const over = said(studyOf({ continuousRating: "tooLong", peakRating: "tooMuch" }))[2];
    expect(over).toMatch(/ continuous: more than that; its hardest 60 s 40 kW of 50 kW: more than that\.$/);
    const lasting: Changes = { ...known, motor: { heat, rating: { continuous_kW: 20 } } };
    expect(said(studyOf(), lasting)[2]).toMatch(/rated by its maker at 20 kW continuous: within it\.$/);
    expect(said(studyOf(), { ...known, motor: { heat } }).at(-1)).toBe(
      "Not known: the maker's continuous power, and how long its peak may last.",
    );
  });
});

describe("what is at fault on a hot day", () => {
  const faults = (course: Partial<HeatCourse>, changes = known) =>
    heatFaults(bareJob(changes), { ...studyOf(), courses: [courseOf("road", course)] }).map((each) =>
      messageIn(each, "metric"),
    );
  it("is nothing where heat holds nothing back and the rating holds", () => {
    expect(faults({})).toEqual([]);
    expect(faults({ heldBack_s: 0.9 })).toEqual([]);
  });
  it("is heat that holds the car back, and a motor that gives more than it is rated for", () => {
    const RATED = "The motor gives more on this road than its maker’s continuous rating.";
    expect(faults({ heldBack_s: 12, continuousRating: "tooMuch" })).toEqual([
      "Heat holds the car back on this road on a day of 35 °C, for 12 s.",
      RATED,
    ]);
    expect(faults({ continuousRating: "tooLong" })).toEqual([RATED]);
    expect(faults({ peakRating: "tooMuch" })).toEqual([RATED]);
    expect(faults({ continuousRating: "holdsShort", peakRating: "tooLong" })).toEqual([]);
    expect(faults({ continuousRating: "tooMuch" }, { ...known, motor: { heat } })).toEqual([]);
  });
  it("names the hill where it is that", () => {
    const study = { ...studyOf(), courses: [courseOf("hill", { heldBack_s: 3 })] };
    expect(heatFaults(bareJob(known), study).map((each) => messageIn(each, "metric"))[0]).toMatch(
      /back on the long hill on/,
    );
  });
});

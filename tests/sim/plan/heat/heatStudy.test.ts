import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { heatStudy, upAndDown } from "../../../../sim/plan/heat/heatStudy.ts";
import { heatFaults, heatWords } from "../../../../sim/plan/heat/heatWords.ts";
import { bareJob, type Changes, traceOf } from "../../../support/bareCar.ts";

/** 1400 kg on a hill of a fifth (3-4-5: sine 0.28) at 50 km/h: 3845.5 N, 53.41 kW. */
const GRADE_ratio = 7 / 24;
const force_N = 1400 * 9.81 * 0.28;
const climb_kW = (force_N * 50) / 3.6 / 1000;
const level = traceOf([
  [0, 0],
  [10, 36],
  [110, 36],
]);
const heat = { capacity_kJpK: 400, cooling_WpK: 0, derateFrom_degC: 240, derateTo_degC: 250 };
const jobOf = (changes: Changes = {}) => ({
  ...bareJob(changes),
  requirement: { longHill_ratio: GRADE_ratio, longHill_km: 2 },
});
const courses = (changes: Changes = {}) => heatStudy(jobOf(changes), 0, level).courses;

it("is a hill up and down again: as high at its top as the sine of its slope has it, level with its foot at the end", () => {
  const { profile, time_s, speed_mps } = upAndDown({
    grade_ratio: GRADE_ratio,
    length_km: 2,
    speed_kmh: 36,
    isAssumed: false,
  });
  expect(Array.from(profile?.distance_m ?? [])).toEqual([0, 2000, 4000]);
  expect(Array.from(profile?.elevation_m ?? [])).toEqual([0, expect.closeTo(560, 9), 0]);
  // 4 km at 10 m/s, and 10 s lost to pulling away and stopping.
  expect(time_s.at(-1)).toBe(410);
  const driven_m = speed_mps.reduce((sum, mps, i) => sum + (i === 0 ? 0 : 0.5 * (mps + speed_mps[i - 1])), 0);
  expect(driven_m).toBeCloseTo(4000, 9);
});

describe("motor and pack on a hot day", () => {
  it("begin as warm as the day that is typed, 35 °C where none is", () => {
    const cold = { motor: { heat } };
    expect(courses(cold)[0].motor_degC).toBeCloseTo(35, 9);
    const asked = { ...jobOf(cold), requirement: { hotDay_degC: 42 } };
    expect(heatStudy(asked, 0, level).hot_degC).toBe(42);
    expect(heatStudy(asked, 0, level).courses[0].motor_degC).toBeCloseTo(42, 9);
  });

  it("warm the motor by all that it loses on five climbs, nothing being cooled away", () => {
    // Of 80 % a quarter of the shaft's power is lost. Work of a pass: m g h up, and what pulling away takes, 1400 kg at 50 km/h.
    const [, hill] = courses({ motor: { loss: { kind: "flat", efficiency_frac: 0.8 }, heat } });
    const work_J = force_N * 2000 + 0.5 * 1400 * (50 / 3.6) ** 2;
    expect(hill).toMatchObject({ times: 5, isEmpty: false, heldBack_s: 0, behind_s: 0 });
    // Half a kilogram's worth of the mass is in the pack; rows of a second cut the corner where the hill turns down.
    expect((hill.motor_degC ?? 0) - 35).toBeGreaterThan((0.985 * 5 * 0.25 * work_J) / 400_000);
    expect((hill.motor_degC ?? 0) - 35).toBeLessThan((1.015 * 5 * 0.25 * work_J) / 400_000);
  });

  it("have the hardest minute and half hour of the shaft, held against the maker's rating", () => {
    const rated = (continuous_kW: number, peak_kW: number) =>
      courses({ motor: { rating: { continuous_kW, peak_kW, peak_s: 60 } } })[1];
    const hill = rated(40, 60);
    // A minute lies within the climb of 144 s; the hardest begins where pulling away at 1 m/s² asks as much as the climb does.
    const [speed_mps, pulling_N] = [50 / 3.6, force_N + 1400];
    const from_s = (1000 * climb_kW) / pulling_N;
    const more_J = 0.5 * pulling_N * (speed_mps ** 2 - from_s ** 2) - 1000 * climb_kW * (speed_mps - from_s);
    expect(hill.peak_kW).toBeCloseTo(climb_kW + more_J / 60_000, 1);
    expect(hill.peakRating).toBe("holdsShort");
    expect(rated(40, 50).peakRating).toBe("tooMuch");
    // Half an hour is five climbs of 144 s and five descents, a half of the climb's power and a little more for pulling away.
    expect(hill.continuous_kW / climb_kW).toBeGreaterThan(0.48);
    expect(hill.continuous_kW / climb_kW).toBeLessThan(0.56);
    expect(hill.continuousRating).toBe("holds");
    expect(rated(20, 60).continuousRating).toBe("tooLong");
  });

  it("is at fault where heat holds the car back, with a sentence", () => {
    const job = jobOf({
      motor: {
        loss: { kind: "flat", efficiency_frac: 0.8 },
        heat: { capacity_kJpK: 20, cooling_WpK: 5, derateFrom_degC: 60, derateTo_degC: 80 },
      },
    });
    const study = heatStudy(job, 0, level);
    expect(study.courses[1].heldBack_s).toBeGreaterThan(1);
    expect(
      heatFaults(job, study)
        .map((each) => messageIn(each, "american"))
        .join(" "),
    ).toMatch(/^Heat holds the car back on the long hill on a day of 95 °F, for /);
  });

  it("says what is not known, and that the long hill is assumed", () => {
    const job = bareJob();
    const said = heatWords(job, heatStudy(job, 0, level)).map((each) => messageIn(each, "metric"));
    expect(said.at(-1)).toBe(
      "Not known: how the motor warms; how the modules warm; the maker's continuous power, and how long its peak may last.",
    );
    expect(said[1]).toContain("8 km at 6 % (assumed: name the client's own)");
  });
});

it("says that the long hill is not climbed where even 10 km/h is too much", () => {
  // A fifth, 3845.5 N, takes 192 Nm at 20 turns (radians) a metre.
  const climbed = (torque_Nm: number) =>
    heatStudy(jobOf({ motor: { envelope: { kind: "peak", torque_Nm, power_kW: 2000 } } }), 0, level).isClimbed;
  expect(climbed(300)).toBe(true);
  expect(climbed(190)).toBe(false);
});

it("goes up and down the long hill from rest to rest, over its length twice", () => {
  const { time_s, speed_mps, profile } = upAndDown({
    grade_ratio: GRADE_ratio,
    length_km: 2,
    speed_kmh: 50,
    isAssumed: false,
  });
  const way_m = speed_mps.reduce((sum, speed, i) => (i === 0 ? 0 : sum + 0.5 * (speed + speed_mps[i - 1])), 0);
  expect(Math.abs(way_m - 4000)).toBeLessThan(50 / 3.6); // to within a sample
  expect([speed_mps[0], speed_mps[time_s.length - 1]]).toEqual([0, 0]);
  expect(profile?.elevation_m[1]).toBeCloseTo(2000 * 0.28, 9);
});

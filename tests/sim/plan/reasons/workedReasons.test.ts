import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import type { UnitHabit } from "../../../../shared/quantity/writeQuantity.ts";
import type { Candidate, SteadyRow } from "../../../../sim/plan/driveReport.ts";
import type { ReasonFacts } from "../../../../sim/plan/reasons/reasonFacts.ts";
import { workedReason } from "../../../../sim/plan/reasons/workedReasons.ts";
import { createChannels } from "../../../../sim/step/channels.ts";
import { bothSides } from "../../../support/calculator.ts";
import { inventedCandidate, inventedUnknown } from "../../../support/inventedCandidate.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
/** 3 Nm at 3000 rpm are 942.48 W at the shaft; two thirds of what is taken in. */
const steady: SteadyRow = {
  speed_kmh: 50,
  rolling_N: 122,
  aero_N: 90,
  drag_N: 0,
  battery_Whpkm: 29.6,
  isHeld: true,
  limit: "none",
  motor_rpm: 3000,
  motor_Nm: 3,
  efficiency_frac: 0.75,
};

function reasonOf(key: string, facts: Partial<ReasonFacts> = {}, units: UnitHabit = "metric") {
  const usual = { job, run: inventedCandidate(10), packIndex: 0, needed_km: 71, steady };
  return workedReason(key, { ...usual, ...facts }, units);
}
const linesOf = (...args: Parameters<typeof reasonOf>) => reasonOf(...args)?.lines ?? [];
const driven = (changes: Partial<Candidate>) => ({ run: inventedCandidate(10, changes) });
const vehicleWith = (changes: Partial<Job["vehicle"]>): Job => ({ ...job, vehicle: { ...job.vehicle, ...changes } });

it("knows nothing of a key that no result has", () => expect(reasonOf("nothing")).toBeUndefined());

describe("the mass as driven", () => {
  it("is the kerb weight without what comes out, with what goes in, the pack and the load", () => {
    expect(reasonOf("testMass_kg", driven({ testMass_kg: 1040 }))).toEqual({
      value: "1040 kg",
      lines: [
        "pack: 8 × 1 modules × 9 kg × (1 + 0.28) = 100 kg",
        "900 kg kerb weight - 200 kg removed + 90 kg added + 100 kg pack + 150 kg load = 1040 kg",
      ],
    });
  });
  it("is the car as weighed when converted where it was, with what is on its roof", () => {
    const converted = vehicleWith({ converted_kg: 800, roof: { mass_kg: 20, dragArea_m2: 0 } });
    expect(linesOf("testMass_kg", { job: converted, ...driven({ testMass_kg: 1070 }) })[1]).toBe(
      "800 kg as converted, without pack + 100 kg pack + 150 kg load + 20 kg on the roof = 1070 kg",
    );
  });
  it("has a pack given whole by its energy, and speaks of the pack that is asked about", () => {
    const whole = { energy_kWh: 12.5, nominal_V: 96, mass_kgpkWh: 8 };
    const packs = [job.packs[0], { ...job.packs[1], whole }];
    const lines = (packIndex: number) => linesOf("testMass_kg", { job: { ...job, packs }, packIndex });
    expect(lines(1)[0]).toBe("pack: 12.5 kWh × 8 kg/kWh = 100 kg");
    expect(lines(0)[0]).toContain("8 × 1 modules");
  });
});

describe("an energy over distance", () => {
  it("is the energy of the whole drive over its distance", () => {
    const run = driven({ distance_km: 5, wheelPositive_Whpkm: 90, battery_Whpkm: 120 });
    expect(linesOf("wheelPositive_Whpkm", run)).toEqual(["0.45 kWh × 1000 / 5 km = 90 Wh/km"]);
    expect(linesOf("battery_Whpkm", run)).toEqual(["0.6 kWh × 1000 / 5 km = 120 Wh/km"]);
  });
  it("at the wall is that of the cells over the charger's efficiency", () => {
    const total = (run: Candidate) => ({ ...run, ledger_Wh: { ...run.ledger_Wh, total: 450 }, wall_Whpkm: 100 });
    expect(reasonOf("wall_Whpkm", { run: total(inventedCandidate(10)) })).toEqual({
      value: "100 Wh/km",
      lines: ["90 Wh/km from the cells / 0.9 = 100 Wh/km"],
    });
  });
  it("has no sum where the car did not move", () => {
    const still = driven({ distance_km: 0 });
    for (const key of ["wheelPositive_Whpkm", "battery_Whpkm", "wall_Whpkm", "range_km"])
      expect(linesOf(key, still), key).toEqual([]);
  });
  it("has one where the car moved less than a kilometre", () => {
    const short = driven({ distance_km: 0.5, battery_Whpkm: 120 });
    expect(linesOf("battery_Whpkm", short)).toEqual(["0.06 kWh × 1000 / 0.5 km = 120 Wh/km"]);
    for (const key of ["wall_Whpkm", "range_km"]) expect(linesOf(key, short), key).toHaveLength(1);
  });
});

describe("the range", () => {
  it("is held against usable energy over what the cells give a kilometre", () => {
    // 500 Wh on 5 km.
    expect(reasonOf("range_km")).toEqual({
      value: "100 km",
      lines: ["cross-check, not used: 10 kWh × 1000 / 100 Wh/km from the cells = 100 km"],
    });
  });
  it("is an at least where driving on was ended by the clock", () => {
    expect(reasonOf("range_km", driven({ rangeEnd: "time" }))?.value).toBe("at least 100 km");
  });
  it("asked for is the usual day by winter and age", () => {
    expect(reasonOf("needed_km", { needed_km: 70.9333 })).toEqual({
      value: "70.9 km",
      lines: ["40 km × 1.33 / 0.75 = 70.9 km"],
      isOfEveryPack: true,
    });
  });
  it("has a share that the usual day takes", () => {
    expect(reasonOf("dayUse_frac")).toEqual({ value: "40 %", lines: ["100 × 40 km / 100 km = 40 %"] });
  });
});

it("of the usable energy tells capacity, the curve's average and the window", () => {
  // 10 kWh over 200 Ah times 0.85.
  expect(reasonOf("usable_kWh", { packIndex: 1 })).toEqual({
    value: "10 kWh",
    lines: ["capacity: 2 × 100 Ah = 200 Ah", "average of the curve 58.8 V × 200 Ah × (0.95 - 0.1) / 1000 = 10 kWh"],
  });
});

it("of the road missed tells what was asked and what was driven", () => {
  expect(linesOf("missed_km", driven({ missed_km: 1.5 }))).toEqual(["6.5 km asked - 5 km driven = 1.5 km"]);
});

it("of braking tells what came back, in kilowatt-hours", () => {
  expect(reasonOf("regen_Wh", driven({ regen_Wh: 250 }))).toEqual({ value: "0.25 kWh", lines: [] });
});

describe("the highest current", () => {
  it("is power over voltage at the row that asks most, wherever it stands", () => {
    for (const at of [1, 3]) {
      const channels = createChannels(5);
      channels.length = 5;
      channels.battery_A.set([0, 30, 30, 30, 30]);
      channels.battery_V.fill(110);
      channels.battery_A[at] = 120;
      channels.battery_V[at] = 100;
      channels.battery_W[at] = 12_000;
      const run = driven({ channels, peak: { ...inventedCandidate(10).peak, battery_A: 120 } });
      expect(reasonOf("peakBattery_A", run)).toEqual({
        value: "120 A",
        lines: ["at that step: 12 kW × 1000 / 100 V at the terminals = 120 A"],
      });
    }
  });
  it("is sought among the rows that were filled", () => {
    const channels = createChannels(3);
    channels.length = 2;
    channels.battery_A.set([0, 50, 900]);
    channels.battery_V.fill(100);
    channels.battery_W.fill(5000);
    expect(linesOf("peakBattery_A", driven({ channels }))[0]).toContain("= 50 A");
  });
  it("has no sum where the steps were not kept", () => {
    expect(reasonOf("peakBattery_A")).toEqual({ value: "100 A", lines: [] });
  });
});

describe("the motor's torque", () => {
  const envelope = [0, 3000, 6000].flatMap((speed_rpm) => [
    { speed_rpm, torque_Nm: 120 - speed_rpm / 100 },
    { speed_rpm, torque_Nm: -200 },
  ]);

  it("is the most that it drives with, and the speed at which torque and power meet", () => {
    // 45 kW / 120 Nm = 375 rad/s = 3581 rpm.
    expect(reasonOf("motor_Nm", { envelope })).toEqual({
      value: "120 Nm at the 100 V of the pack",
      lines: ["peak power is reached at 45 kW × 60000 / (2 × 3.14 × 120 Nm) = 3580 rpm, at 108 V"],
    });
  });
  it("has the factor of horsepower and pound-feet for whoever reads those", () => {
    const [line] = linesOf("motor_Nm", { envelope }, "british");
    expect(line).toContain("60.3 bhp × 33000 / (2 × 3.14 × 88.5 lb ft) = 3580 rpm");
    const { left, right } = bothSides(line.replace(", at 108 V", ""));
    expect(left[0]).toBeLessThanOrEqual(right[1]);
    expect(left[1]).toBeGreaterThanOrEqual(right[0]);
  });
  it("has no corner where the envelope is given by points", () => {
    const points = { kind: "points" as const, speed_rpm: [0, 6000], torque_Nm: [120, 60] };
    const byPoints = { ...job, motor: { ...job.motor, envelope: points } };
    expect(linesOf("motor_Nm", { job: byPoints, envelope })).toEqual([]);
  });
  it("is not explained without an envelope", () => {
    expect(reasonOf("motor_Nm")).toBeUndefined();
    expect(reasonOf("motor_Nm", { envelope: [{ speed_rpm: 0, torque_Nm: -5 }] })).toBeUndefined();
  });
  it("is explained where the motor drives with none at all", () => {
    expect(reasonOf("motor_Nm", { envelope: [{ speed_rpm: 0, torque_Nm: 0 }] })?.value).toContain("0 Nm");
  });
});

describe("at a steady speed", () => {
  it("losses are what is taken in without what reaches the shaft", () => {
    // 942.48 W / 0.75 = 1256.6 W, of which a quarter is lost.
    expect(reasonOf("motorLoss_W")).toEqual({
      value: "0.314 kW at a steady 50 km/h",
      lines: ["1.26 kW taken in × (1 - 0.75) = 0.314 kW"],
    });
  });
  it("the energy is that of controller and accessories over the speed", () => {
    // 60 W at 12 V over 90 %.
    expect(reasonOf("steady_Whpkm")).toEqual({
      value: "29.6 Wh/km at 50 km/h",
      lines: ["(1.26 kW at the controller + 0.0667 kW of accessories) × 1000 / 50 km/h = 29.6 Wh/km"],
    });
  });
  it("a motor that does nothing takes nothing in", () => {
    expect(linesOf("motorLoss_W", { steady: { ...steady, efficiency_frac: 0 } })[0]).toBe(
      "0 kW taken in × (1 - 0) = 0 kW",
    );
  });
  it("rolling resistance is told with its speed", () => {
    expect(reasonOf("rolling_N")?.value).toBe("122 N at 50 km/h");
  });
  it("nothing is explained where the car holds none", () => {
    for (const key of ["rolling_N", "motorLoss_W", "steady_Whpkm"])
      expect(reasonOf(key, { steady: undefined }), key).toBeUndefined();
  });
});

describe("the band of the range", () => {
  it("is not explained before the open values were driven", () => expect(reasonOf("band_km")).toBeUndefined());

  it("is the root of the squares to either side, of values at which the car drives the road", () => {
    const unknowns = [
      inventedUnknown(100, 3, 4),
      inventedUnknown(100, 4, 3),
      inventedUnknown(100, 50, 50, { failsAtLow: true }),
      inventedUnknown(100, 50, 50, { failsAtHigh: true }),
    ];
    expect(reasonOf("band_km", { unknowns })).toEqual({
      value: "95 km to 105 km",
      lines: ["less: √((4 km)² + (3 km)²) = 5 km", "more: √((4 km)² + (3 km)²) = 5 km"],
    });
  });
  it("takes together what is beyond the six largest", () => {
    const unknowns = [8, 2, 2, 2, 2, 2, 3, 4].map((less_km) => inventedUnknown(100, 0, less_km));
    // 64 + 16 + 9 + 5 x 4 = 109, of which the last two fours are 8.
    expect(linesOf("band_km", { unknowns })).toEqual([
      "less: √((8 km)² + (4 km)² + (3 km)² + (2 km)² + (2 km)² + (2 km)² + (2.83 km)² for all others together) = 10.4 km",
    ]);
  });
  it("tells six without taking any together", () => {
    const unknowns = [1, 1, 1, 1, 1, 2].map((more_km) => inventedUnknown(100, more_km, 0));
    expect(linesOf("band_km", { unknowns })).toEqual([
      "more: √((2 km)² + (1 km)² + (1 km)² + (1 km)² + (1 km)² + (1 km)²) = 3 km",
    ]);
  });
});

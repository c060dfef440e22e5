import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { recommendLimit } from "../../../../sim/plan/torqueLimit/recommendLimit.ts";
import { secondsBehind } from "../../../../sim/plan/torqueLimit/secondsBehind.ts";
import { shaftTorques } from "../../../../sim/plan/torqueLimit/shaftTorques.ts";
import { torqueAdvice } from "../../../../sim/plan/torqueLimit/torqueAdvice.ts";
import { torqueSweep, usualCaps_Nm } from "../../../../sim/plan/torqueLimit/torqueSweep.ts";
import { torquesToCompare } from "../../../../sim/plan/torqueLimit/torquesToCompare.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes, driven, traceOf } from "../../../support/bareCar.ts";

const box = {
  gears: [
    { name: "low", gear_ratio: 3.5, efficiency_frac: 0.95 },
    { name: "high", gear_ratio: 1.5, efficiency_frac: 0.96 },
  ],
  finalDrive_ratio: 4.7,
  finalDriveEfficiency_frac: 0.92,
  noLoadDrag_Nm: 2,
  shifting: { kind: "fixed", gear: "high" },
} as const satisfies Changes["driveline"];
const transferBox = {
  high_ratio: 1,
  highEfficiency_frac: 1,
  low_ratio: 2.4,
  lowEfficiency_frac: 0.94,
  range: "high",
  isFrontEngaged: false,
  hubs: "free",
} as const;
const motor = { envelope: { kind: "peak", torque_Nm: 200, power_kW: 60 } } as const;

describe("the shafts behind the gearbox", () => {
  it("carry the input less its drag, times the ratios and efficiencies up to them, each half-shaft half of it", () => {
    const [low, high] = shaftTorques(bareJob({ driveline: box }), 100);
    expect(low.propellerShaft_Nm).toBeCloseTo(98 * 3.5 * 0.95, 9);
    expect(low.halfShaft_Nm).toBeCloseTo((98 * 3.5 * 0.95 * 4.7 * 0.92) / 2, 9);
    expect(high.propellerShaft_Nm).toBeCloseTo(98 * 1.5 * 0.96, 9);
    expect(low).not.toHaveProperty("inputAtLimit_Nm");
  });

  it("carry so much more in low range, and half of it where both axles drive", () => {
    const job = bareJob({ driveline: { ...box, transferBox } });
    const rows = shaftTorques(job, 100);
    expect(rows.map(({ range }) => range)).toEqual(["high", "high", "low", "low"]);
    expect(rows[2].propellerShaft_Nm).toBeCloseTo(98 * 3.5 * 0.95 * 2.4 * 0.94, 9);
    const engaged = bareJob({
      driveline: { ...box, transferBox: { ...transferBox, isFrontEngaged: true, hubs: "locked" } },
    });
    expect(shaftTorques(engaged, 100)[2].halfShaft_Nm).toBeCloseTo(rows[2].halfShaft_Nm / 2, 9);
  });

  it("have their limit at the input that the step's own driveline limit is", () => {
    const job = bareJob({ driveline: { ...box, limits: { propellerShaft_Nm: 300, halfShaft_Nm: 500 } } });
    const [, high] = shaftTorques(job, 0);
    expect(high.inputAtLimit_Nm).toBeCloseTo(prepare(job, job.packs[0]).gears[0].drive_Nm, 9);
    expect(high).toMatchObject({ weakest: "half-shaft", propellerShaft_Nm: 0 });
    expect(shaftTorques(job, high.inputAtLimit_Nm ?? 0)[1].halfShaft_Nm).toBeCloseTo(500, 9);
  });
});

describe("the limit by the trade's rule", () => {
  const limitOf = (limits: object, engine_Nm?: number, gear = "high") =>
    recommendLimit({
      ...bareJob({ motor, driveline: { ...box, limits, shifting: { kind: "fixed", gear } } }),
      ...(engine_Nm !== undefined && { engine: { ratedTorque_Nm: engine_Nm } }),
    });

  it("is what the old engine gave, or what the gearbox is known to take, up to a fifth more than that", () => {
    expect(limitOf({}, 115.9)).toEqual({ torque_Nm: 115, because: "engine" });
    expect(limitOf({ gearboxInput_Nm: 130 }, 115)).toEqual({ torque_Nm: 130, because: "gearbox" });
    expect(limitOf({ gearboxInput_Nm: 150 }, 115)).toEqual({ torque_Nm: 138, because: "strong" });
    expect(limitOf({ gearboxInput_Nm: 150 })).toEqual({ torque_Nm: 150, because: "gearbox" });
  });

  it("goes by a typed curve of the engine where no rated torque is typed, and by nothing that is assumed of it", () => {
    const job = bareJob({ motor, driveline: { ...box, limits: {}, shifting: { kind: "fixed", gear: "high" } } });
    const curve = { speed_rpm: [1000, 2400, 5000], torque_Nm: [80, 96.5, 70] };
    expect(recommendLimit({ ...job, engine: { curve } })).toEqual({ torque_Nm: 96, because: "engine" });
    expect(recommendLimit({ ...job, engine: { ratedTorque_Nm: 104, curve } })?.torque_Nm).toBe(104);
    expect(usualCaps_Nm({ ...job, engine: { curve } })).toContain(96.5);
    expect(torquesToCompare({ ...job, engine: { curve } }, undefined)[0]).toEqual({
      name: "old engine",
      torque_Nm: 96.5,
    });
    expect(recommendLimit({ ...job, engine: { ratedPower_kW: 40, power_rpm: 5000 } })).toBeUndefined();
  });

  it("is never more than the shafts take in a gear in use, nor than the motor has; gears not in use do not count", () => {
    const shafts = { gearboxInput_Nm: 150, halfShaft_Nm: 500 };
    const inHigh_Nm = 500 / ((1.5 * 4.7 * 0.96 * 0.92) / 2) + 2;
    const inLow_Nm = 500 / ((3.5 * 4.7 * 0.95 * 0.92) / 2) + 2;
    expect(inHigh_Nm).toBeGreaterThan(150);
    expect(limitOf(shafts)).toEqual({ torque_Nm: 150, because: "gearbox" });
    expect(limitOf(shafts, undefined, "low")).toEqual({
      torque_Nm: Math.floor(inLow_Nm),
      because: "half-shaft",
      gear: { gear: "low" },
    });
    expect(limitOf({ gearboxInput_Nm: 900 })).toEqual({ torque_Nm: 200, because: "motor" });
    expect(limitOf({})).toBeUndefined();
  });
});

it("a car at half of the road's speed for 100 s is 50 s behind, and one that keeps up is not behind", () => {
  const column = (by: (i: number) => number) => Float64Array.from({ length: 101 }, (_, i) => by(i));
  const { channels } = driven(
    bareJob(),
    traceOf([
      [0, 0],
      [10, 36],
    ]),
  );
  const at = (speed_mps: number) =>
    secondsBehind({
      ...channels,
      length: 101,
      time_s: column((i) => i),
      target_mps: column(() => 10),
      distance_m: column((i) => i * speed_mps),
    });
  expect(at(5)).toBeCloseTo(50, 9);
  expect(at(10)).toBe(0);
  expect(at(12)).toBe(0);
});

describe("each limit tried", () => {
  const road = traceOf([
    [0, 0],
    [5, 50],
    [60, 50],
    [70, 0],
  ]);
  // No resistance and no losses: torque is force at the tyres times radius over ratio, 1400 kg, in a car of 1.5 x 4.7 on 300 mm.
  const smooth = {
    ...box,
    noLoadDrag_Nm: 0,
    finalDriveEfficiency_frac: 1,
    gears: [box.gears[0], { ...box.gears[1], efficiency_frac: 1 }],
  };
  const jobOf = (ramp_s: number) =>
    bareJob({
      driveline: { ...smooth, limits: { halfShaft_Nm: 50 } },
      motor: { ...motor, envelope: { kind: "peak", torque_Nm: 200, power_kW: 2000 } },
      controller: { torqueCap_Nm: 120, ramp_s },
    });
  const force_N = (torque_Nm: number) => (torque_Nm * 1.5 * 4.7) / 0.3;

  it("reaches a speed in m v / F, and half of the ramp later", () => {
    const [row] = torqueSweep(jobOf(0), 0, road, [100]);
    const [ramped] = torqueSweep(jobOf(1), 0, road, [100]);
    const to50_s = (1400 * (50 / 3.6)) / force_N(100);
    // Steps of 0.05 s, the speed between them on a straight line.
    expect(row.to50kmh_s).toBeCloseTo(to50_s, 3);
    expect(row.to100kmh_s).toBeCloseTo(2 * to50_s, 3);
    expect(row.from80to100kmh_s).toBeCloseTo(0.4 * to50_s, 3);
    expect((ramped.to50kmh_s ?? 0) - (row.to50kmh_s ?? 0)).toBeCloseTo(0.5, 3);
  });

  it("starts on sin θ = F / m g at most, by the cap and not by what the shafts take", () => {
    const [row] = torqueSweep(jobOf(0), 0, road, [100], 0.1);
    const sin = force_N(100) / (1400 * 9.81);
    expect(row.steepestStart_ratio).toBeCloseTo(sin / Math.sqrt(1 - sin * sin), 6);
    const needed_N = (1400 * 9.81 * 0.1) / Math.sqrt(1.01);
    expect(row.hill).toEqual({ starts: true, spare_frac: expect.closeTo(force_N(100) / needed_N - 1, 5) });
    const [weak] = torqueSweep(jobOf(0), 0, road, [20], 0.1);
    expect(weak.hill?.starts).toBe(false);
  });

  it("is behind the road by what it misses at the start", () => {
    const [little, much] = torqueSweep(jobOf(0), 0, road, [40, 200]);
    // 50 km/h wanted in 5 s takes 3889 N: 200 Nm give 4700 N. 40 Nm give 940 N, and then the road waits for nobody.
    expect(much.behind_s).toBe(0);
    const wanted_mps = 50 / 3.6;
    const accel_mps2 = force_N(40) / 1400;
    const to50_s = wanted_mps / accel_mps2;
    const firstLost_s = 5 - (0.5 * accel_mps2 * 25) / (wanted_mps / 2);
    const driven_m = 0.5 * (5 * accel_mps2 + wanted_mps) * (to50_s - 5) + wanted_mps * (60 - to50_s);
    // The steps of a second that the speed is reached in, and the brakes' own, are worth a hundredth.
    expect(little.behind_s).toBeCloseTo(firstLost_s + 55 - driven_m / wanted_mps, 1);
  });

  it("is by itself what a workshop would try: shares of the peak, the cap as set, engine, gearbox, recommended", () => {
    const job = { ...jobOf(0), engine: { ratedTorque_Nm: 90 } };
    const caps_Nm = usualCaps_Nm(job);
    expect(caps_Nm).toEqual([...new Set(caps_Nm)].sort((a, b) => a - b));
    expect(caps_Nm).toEqual(expect.arrayContaining([90, 100, 120, 150, 200, recommendLimit(job)?.torque_Nm]));
  });
});

describe("in words", () => {
  const wordsOf = (changes: Changes, engine_Nm?: number) => {
    const job = { ...bareJob(changes), ...(engine_Nm !== undefined && { engine: { ratedTorque_Nm: engine_Nm } }) };
    const road = traceOf([
      [0, 0],
      [20, 40],
      [60, 40],
      [70, 0],
    ]);
    const recommended = recommendLimit(job);
    const rows = torqueSweep(job, 0, road, usualCaps_Nm(job));
    return torqueAdvice(job, rows, recommended).map((each) => messageIn(each, "metric"));
  };

  it("it says what to set and why, what it costs, and where the shafts take less", () => {
    const words = wordsOf(
      { motor, driveline: { ...box, limits: { halfShaft_Nm: 700 } }, controller: { torqueCap_Nm: 150 } },
      115,
    );
    expect(words[0]).toBe(
      "Set the torque cap to 115 Nm at the motor shaft: what the old engine gave, as the gearbox input limit is not known.",
    );
    expect(words[1]).toBe("It is not so now: the motor may give 150 Nm, which is more.");
    expect(words[2]).toMatch(
      /^Against the motor's 200 Nm that costs the driver [\d.]+ s instead of [\d.]+ s to 50 km\/h/,
    );
    expect(words.join("\n")).toMatch(
      /^In low that puts 812 Nm on each half-shaft, which takes 700 Nm: there the motor may give 99 Nm at most\.$/m,
    );
    expect(words.at(-1)).toMatch(/^Let full torque come in over 0\.5 s to 1 s, now 0 s/);
  });

  it("it says that nothing can be recommended where nothing is known, and that no cap is needed where the motor is weak", () => {
    expect(wordsOf({ motor, driveline: box })).toEqual([
      "No limit can be recommended: neither the old engine's torque nor what gearbox or shafts stand has been entered.",
    ]);
    const weak = wordsOf({ motor, driveline: { ...box, limits: { gearboxInput_Nm: 300 } }, controller: { ramp_s: 1 } });
    expect(weak).toEqual(["No cap is needed: the motor's own peak, 200 Nm, is within the limits."]);
    const set = wordsOf({ motor, driveline: box, controller: { torqueCap_Nm: 80, ramp_s: 1 } }, 120);
    expect(set[1]).toBe("It is set to 80 Nm now, which is within that.");
  });

  it("it compares each torque once", () => {
    const job = { ...bareJob({ motor, controller: { torqueCap_Nm: 120 } }), engine: { ratedTorque_Nm: 120 } };
    expect(torquesToCompare(job, recommendLimit(job))).toEqual([
      { name: "old engine", torque_Nm: 120 },
      { name: "as set", torque_Nm: 120 },
      { name: "motor alone", torque_Nm: 200 },
    ]);
  });
});

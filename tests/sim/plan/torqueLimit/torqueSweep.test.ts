import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { recommendLimit } from "../../../../sim/plan/torqueLimit/recommendLimit.ts";
import { torqueAdvice } from "../../../../sim/plan/torqueLimit/torqueAdvice.ts";
import { torqueSweep, usualCaps_Nm } from "../../../../sim/plan/torqueLimit/torqueSweep.ts";
import { bareJob, type Changes, traceOf } from "../../../support/bareCar.ts";
import { box, motor } from "./boxesByHand.ts";

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
});

import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { engineCar, engineForce_N, engineStart } from "../../../../sim/plan/going/engineStart.ts";
import { drawnEngine, knownEngine } from "../../../../sim/plan/going/knownEngine.ts";
import { timeTo_s } from "../../../../sim/plan/going/standingStart.ts";
import { engineTopSpeed } from "../../../../sim/plan/going/topSpeed.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

const RADPS = (2 * Math.PI) / 60;
/** 100 Nm from rest to 2000 rpm while the clutch slips; 40 kW at 5000 rpm, which is 76.39 Nm. */
const engine = drawnEngine({ ratedTorque_Nm: 100, torque_rpm: 2000, ratedPower_kW: 40, power_rpm: 5000 });
const gears = [
  { name: "low", gear_ratio: 3, efficiency_frac: 1 },
  { name: "high", gear_ratio: 1, efficiency_frac: 1 },
];
// No flywheel of its own and nothing that resists: one factor of 1 on 1400 kg. Low turns the engine 60 times a metre, high 20 times.
const jobOf = (changes: Changes = {}): Job =>
  bareJob({
    test_kg: 1401,
    ...changes,
    vehicle: { inertia: { kind: "massFactor", mass_ratio: 1 }, ...changes.vehicle },
    driveline: { gears, shifting: { kind: "fixed", gear: "low" }, ...changes.driveline },
  });

describe("the old car from rest", () => {
  it("weighs what it did as it arrived, with its load, whatever the conversion takes out and puts in", () => {
    const car = engineCar(jobOf({ vehicle: { removed_kg: 200, added_kg: 90, load_kg: 75 } }), engine);
    expect(car.mass_kg).toBe(1400 + 75);
  });

  it("is drawn from rest to the end, a row a step, its distance the area below its speed", () => {
    const { time_s, speed_mps, distance_m, gear } = engineStart(engineCar(jobOf(), engine), 3, 0.01);
    expect([time_s, speed_mps, distance_m, gear].map(({ length }) => length)).toEqual([301, 301, 301, 301]);
    expect([time_s[0], speed_mps[0], distance_m[0]]).toEqual([0, 0, 0]);
    expect(time_s[300]).toBeCloseTo(3, 9);
    const below_m = speed_mps.reduce((sum, mps, i) => sum + (i === 0 ? 0 : 0.005 * (speed_mps[i - 1] + mps)), 0);
    expect(distance_m[300]).toBeCloseTo(below_m, 2);
  });

  it("speeds up evenly while the clutch slips at best torque, half of the half second of taking up lost", () => {
    const start = engineStart(engineCar(jobOf(), engine), 3, 0.01);
    // 100 Nm x 60 a metre on 1400 kg: 4.286 m/s² until the engine is caught up at 2000 rpm, 3.49 m/s.
    const caught_mps = (2000 * RADPS) / 60;
    const at_mps = caught_mps - 0.1;
    expect(timeTo_s(start, at_mps)).toBeCloseTo(0.25 + (at_mps * 1400) / 6000, 3);
  });

  it("speeds up by what is left of its pull beside rolling and air", () => {
    const job = jobOf({
      vehicle: {
        tyres: { loadedRadius_mm: 300, rolling_coeff: 0.02, followsTemperature: false },
        roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 },
      },
    });
    const { speed_mps } = engineStart(engineCar(job, engine), 3, 0.01);
    // From 1 to 1.5 s 6000 N less 1400 kg x 9.81 x 0.02 = 275 N of rolling; the air takes 5 N at 3 m/s: a thousandth.
    const gained_mps = (speed_mps[100] - speed_mps[60]) / 0.4;
    expect(Math.abs(gained_mps - (6000 - 274.7) / 1400)).toBeLessThan(0.001 * gained_mps);
  });

  it("begins in the lowest gear, in whatever order the gears are listed", () => {
    const start = (order: typeof gears) =>
      engineStart(engineCar(jobOf({ driveline: { gears: order } }), engine), 20, 0.01);
    expect(start([...gears].reverse())).toEqual(start(gears));
  });

  it("changes up at the engine's limit where the next gear pulls less, and loses the time of the change, no more", () => {
    const car = engineCar(jobOf(), engine);
    // A hundredth before the limit of 5500 rpm.
    const limit_mps = (0.99 * 5500 * RADPS) / 60;
    const [quick, slow] = [0, 0.8].map((change_s) => engineStart(car, 20, 0.01, change_s));
    const first = slow.gear.indexOf(1);
    expect(slow.speed_mps[first - 1]).toBeCloseTo(limit_mps, 1);
    const [a, b] = [timeTo_s(quick, 12) ?? 0, timeTo_s(slow, 12) ?? 0];
    expect(b - a).toBeCloseTo(0.8, 6);
  });

  it("turns its flywheel too: J times the ratio squared counts as mass", () => {
    // 0.001 kg m² for each of 100 Nm, times 20² in high alone: 40 kg on 1400 kg.
    const only = { gears: [gears[1]], shifting: { kind: "fixed" as const, gear: "high" } };
    const parts = engineCar(jobOf({ vehicle: { inertia: { kind: "parts" } }, driveline: only }), engine);
    const bare = engineCar(jobOf({ driveline: only }), engine);
    const slope = (car: typeof bare) => {
      const { speed_mps } = engineStart(car, 12, 0.01);
      const i = speed_mps.findIndex((speed) => speed > 11);
      return (speed_mps[i + 1] - speed_mps[i]) / 0.01 / (engineForce_N(car, car.gears[0], speed_mps[i]) ?? 0);
    };
    expect(slope(bare)).toBeCloseTo(1 / 1400, 6);
    expect(slope(parts)).toBeCloseTo(1 / 1440, 6);
  });

  it("keeps to the grip of its driven tyres", () => {
    const balance = { wheelbase_mm: 2400, gravityHeight_mm: 600, frontShare_frac: 0.5 };
    const job = jobOf({ vehicle: { balance }, environment: { grip_coeff: 0.2 } });
    const { speed_mps } = engineStart(engineCar(job, engine), 2, 0.01);
    // a = mu g 0.5 / (1 - mu h/L) on the rear axle.
    const a_mps2 = (0.2 * 9.81 * 0.5) / (1 - 0.2 * 0.25);
    expect((speed_mps[150] - speed_mps[100]) / 0.5).toBeCloseTo(a_mps2, 2);
  });
});

describe("an engine whose curve is typed", () => {
  // 100 Nm at 1000 rpm, 50 Nm at 5000 rpm, a straight line between; in low 60 turns (radians) a metre.
  const { engine: typed } = knownEngine({ curve: { speed_rpm: [1000, 5000], torque_Nm: [100, 50] } });
  if (!typed) throw new Error("no engine");

  it("speeds up by it: with a pull that falls evenly with speed, t = (m / c) ln(F1 / F)", () => {
    const start = engineStart(engineCar(jobOf(), typed), 6, 0.01);
    const caught_mps = (1000 * RADPS) / 60;
    const fall_Npmps = (50 * 60) / ((4000 * RADPS) / 60);
    const to_mps = 7;
    const caught_s = 0.25 + (caught_mps * 1400) / 6000;
    const later_s = (1400 / fall_Npmps) * Math.log(6000 / (6000 - fall_Npmps * (to_mps - caught_mps)));
    expect(timeTo_s(start, to_mps)).toBeCloseTo(caught_s + later_s, 3);
  });

  it("turns no faster than its last point", () => {
    const top = engineTopSpeed(engineCar(jobOf(), typed));
    expect(top).toMatchObject({ gear: "high", because: "rotation" });
    expect(top.speed_mps).toBeCloseTo((5000 * RADPS) / 20, 9);
  });
});

describe("its top speed", () => {
  it("is where the power is used up by the air: v³ = P / (½ ρ CdA)", () => {
    // High at 5000 rpm goes 26.18 m/s; a drag area that takes 40 kW at exactly that speed.
    const speed_mps = (5000 * RADPS) / 20;
    const area_m2 = 40_000 / (0.5 * 1.2 * speed_mps ** 3);
    const job = jobOf({
      vehicle: {
        roadLoad: {
          kind: "coastDown",
          f0_N: 0,
          f1_Npkmh: 0,
          f2_Npkmh2: (0.5 * 1.2 * area_m2) / 3.6 ** 2,
          mass_kg: 1400,
        },
      },
      environment: { temperature_degC: 20, pressure_kPa: 100 },
    });
    const top = engineTopSpeed(engineCar(job, engine));
    expect(top).toMatchObject({ gear: "high", because: "pull" });
    // The density of the air at 20 degC and 100 kPa is that of the reference, to its printed digits.
    expect(top.speed_mps / speed_mps).toBeCloseTo(1, 2);
  });

  it("is where the engine turns no faster, with nothing that resists", () => {
    const top = engineTopSpeed(engineCar(jobOf(), engine));
    expect(top).toMatchObject({ gear: "high", because: "rotation" });
    expect(top.speed_mps).toBeCloseTo((5500 * RADPS) / 20, 9);
  });
});

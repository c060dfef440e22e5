import { describe, expect, it } from "vitest";
import type { EngineCar } from "../../../../sim/plan/going/engineStart.ts";
import type { MotorStart } from "../../../../sim/plan/going/standingStart.ts";
import { engineTopSpeed, motorTopSpeed } from "../../../../sim/plan/going/topSpeed.ts";
import { CONTROLLER, MOTOR } from "../../../../sim/step/limits.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob } from "../../../support/bareCar.ts";

const job = bareJob();
const model = prepare(job, job.packs[0]);
const [gear] = model.gears;

/**
 * An engine of 100 Nm at any speed up to 500 rad/s in gears of so many turns (radians) a metre, without losses or rolling, against
 * `drag` v² newtons: a gear of 10 pulls 1000 N up to 50 m/s.
 */
function carOf(motor_radpm: readonly number[], drag_Npmps2: number, torque_Nm = [100, 100]): EngineCar {
  const { grip: _, ...rest } = model;
  return {
    mass_kg: 1400,
    inertia_kg: 1400,
    grip: undefined,
    noLoadDrag_Nm: 0,
    flywheel_kgm2: 0,
    slip_radps: 100,
    gears: motor_radpm.map((radpm) => ({ ...gear, name: `of ${radpm}`, motor_radpm: radpm, efficiency_frac: 1 })),
    road: { ...rest.road, drag_Npmps2 },
    speed_radps: [0, 500],
    torque_Nm,
  };
}

describe("the engine's top speed", () => {
  it("is where its pull meets what resists, to a centimetre a second", () => {
    // 1000 N over 0.5 v²: 44.72 m/s.
    const found = engineTopSpeed(carOf([10], 0.5));
    expect(found).toMatchObject({ gear: "of 10", because: "pull" });
    expect(Math.sqrt(2000) - found.speed_mps).toBeGreaterThanOrEqual(0);
    expect(Math.sqrt(2000) - found.speed_mps).toBeLessThan(0.0101);
  });
  it("is what it turns where it still pulls there", () => {
    expect(engineTopSpeed(carOf([10], 0.3))).toEqual({ speed_mps: 50, gear: "of 10", because: "rotation" });
  });
  it("is that of the gear in which it is highest, not the last one", () => {
    // A gear of 5 pulls 500 N: 31.6 m/s; one of 20 ends at 25 m/s.
    expect(engineTopSpeed(carOf([20, 10, 5], 0.5)).gear).toBe("of 10");
  });
  it("is none where it pulls nothing", () => {
    expect(engineTopSpeed(carOf([10], 0.5, [-5, -5]))).toMatchObject({ speed_mps: 0, because: "pull" });
  });
});

describe("the motor's top speed", () => {
  const start = (speeds: readonly number[], limits: readonly number[]): MotorStart => ({
    time_s: Float64Array.from(speeds, (_, i) => i),
    speed_mps: Float64Array.from(speeds),
    distance_m: Float64Array.from(speeds),
    gear: new Uint8Array(speeds.length),
    limit: Uint8Array.from(limits),
  });
  it("is the highest of its start, with what bound it there", () => {
    expect(motorTopSpeed(model, start([0, 20, 30, 29], [0, MOTOR, CONTROLLER, MOTOR]))).toEqual({
      speed_mps: 30,
      gear: "only",
      because: "pull",
      limit: "controller",
    });
  });
  it("is what the motor turns from 99.5 % of that on", () => {
    const because = (share: number) => motorTopSpeed(model, start([0, share * gear.top_mps], [0, MOTOR])).because;
    expect(because(0.9951)).toBe("rotation");
    expect(because(0.9949)).toBe("pull");
  });
  it("is what the motor turns, too, from where its torque begins to fade out, if nothing else binds", () => {
    const rollBack_radps = 0.04 * gear.top_mps * gear.motor_radpm;
    const fading = { ...model, motor: { ...model.motor, rollBack_radps } };
    const because = (share: number, limit: number) =>
      motorTopSpeed(fading, start([0, share * gear.top_mps], [0, limit])).because;
    expect(because(0.961, MOTOR)).toBe("rotation");
    expect(because(0.961, CONTROLLER)).toBe("pull");
    expect(because(0.959, MOTOR)).toBe("pull");
  });
});

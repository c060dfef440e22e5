import { describe, expect, it } from "vitest";
import { balance } from "../../../sim/step/balance.ts";
import { beginInterval } from "../../../sim/step/beginInterval.ts";
import { torquePerWatt } from "../../../sim/step/driveLimits.ts";
import { LIMITS } from "../../../sim/step/limits.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { beginRoad, createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

/**
 * One second from 9.5 to 10.5 m/s: 1400 N at the tyres, 70 Nm at 200 rad/s, 14 kW, 35 A at 400 V. Returns by how much a car breaks the worst
 * of its limits, and which it is said to be.
 */
function asked(changes: Changes, { ramp_frac = 1, motor_K = 293.15, pack_K = 293.15, end_mps = 10.5 } = {}) {
  const job = bareJob(changes);
  const context = createRunContext(prepare(job, job.packs[0]), 0.5);
  beginRoad(context, undefined, 9.5);
  context.state.motor_K = motor_K;
  context.state.pack.temperature_K = pack_K;
  context.ramp_frac = ramp_frac;
  beginInterval(context, end_mps, 1);
  const over_Nm = balance(context, end_mps, 1);
  return { over_Nm, limit: LIMITS[context.interval.limit] };
}

const controller = (limits: Record<string, unknown>) => ({ controller: { ...limits, regen: { isOn: false } } });
const heat = { capacity_kJpK: 1000, cooling_WpK: 0, derateFrom_degC: 100, derateTo_degC: 140 };
/** A pack that gives so many amperes and no more. */
const amperes = (continuous_A: number) => ({ continuous_A, peak_A: continuous_A, peak_s: 0 });

describe("what a drive asks beyond a limit is told as torque at the motor, above zero", () => {
  it("grip, in newtons over ratio and efficiency", () => {
    // 0.1 of half the weight and of what moves to the rear: 0.2 x 1400 kg x 1 m/s².
    const grip_N = 0.1 * 1400 * (9.81 * 0.5 + 0.2);
    const found = asked({
      vehicle: { balance: { wheelbase_mm: 2500, gravityHeight_mm: 500, frontShare_frac: 0.5 } },
      environment: { grip_coeff: 0.1 },
      driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.8 }] },
    });
    expect(found.over_Nm).toBeCloseTo((1400 - grip_N) / (20 * 0.8), 9);
    expect(found.limit).toBe("grip");
  });
  it("the old gearbox's input, which does not carry what speeds up the rotor", () => {
    // The rotor takes 0.5 x 20 rad/s² beside the 70 Nm.
    const found = asked({ motor: { rotorInertia_kgm2: 0.5 }, driveline: { limits: { gearboxInput_Nm: 60 } } });
    expect(found.over_Nm).toBeCloseTo(10, 9);
    expect(found.limit).toBe("driveline");
  });
  it("the motor's envelope", () => {
    const found = asked({ motor: { envelope: { kind: "peak", torque_Nm: 50, power_kW: 2000 } } });
    expect(found).toEqual({ over_Nm: expect.closeTo(20, 9), limit: "motor" });
  });
  it("the motor's envelope rolled back towards its top speed, by the speed at the end of the interval", () => {
    // 210 rad/s at the end: half of a band of 20 rad/s below 220 rad/s is left of 100 Nm.
    const rpm = 30 / Math.PI;
    const envelope = { kind: "peak" as const, torque_Nm: 100, power_kW: 2000 };
    const found = asked({ motor: { envelope, maxSpeed_rpm: 220 * rpm, rollBack_rpm: 20 * rpm } });
    expect(found).toEqual({ over_Nm: expect.closeTo(20, 9), limit: "motor" });
  });
  it("the controller's torque", () => {
    expect(asked(controller({ torqueCap_Nm: 45 }))).toEqual({ over_Nm: expect.closeTo(25, 9), limit: "controller" });
  });
  it("the controller's power, over the motor's speed", () => {
    expect(asked(controller({ power_kW: 10 }))).toEqual({ over_Nm: expect.closeTo(20, 9), limit: "controller" });
  });
  it("the controller's current at the voltage under load, over the motor's speed", () => {
    expect(asked(controller({ current_A: 30 })).over_Nm).toBeCloseTo(10, 5);
    expect(asked(controller({ current_A: 30 })).limit).toBe("controller");
  });
  it("the pack's power, over the motor's speed", () => {
    const found = asked({ module: { discharge: amperes(25) } });
    expect(found.over_Nm).toBeCloseTo(20, 5);
    expect(found.limit).toBe("pack");
  });
  it("what heat leaves the motor", () => {
    const motor = { envelope: { kind: "peak" as const, torque_Nm: 80, power_kW: 2000 }, heat };
    expect(asked({ motor }, { motor_K: 393.15 })).toEqual({ over_Nm: expect.closeTo(30, 9), limit: "heat" });
  });
  it("what heat leaves the pack, over the motor's speed", () => {
    // Half of 40 A is left: 8 of 14 kW.
    const found = asked({ module: { discharge: amperes(40), heat } }, { pack_K: 393.15 });
    expect(found.over_Nm).toBeCloseTo(30, 5);
    expect(found.limit).toBe("heat");
  });
});

it("is not above zero, and names no limit, where all limits hold: by what the nearest leaves", () => {
  const found = asked(controller({ torqueCap_Nm: 75 }));
  expect(found).toEqual({ over_Nm: expect.closeTo(-5, 9), limit: "none" });
  expect(asked(controller({ power_kW: 16 })).over_Nm).toBeCloseTo(-10, 9);
});

describe("the controller lets through", () => {
  const whole = controller({ min_V: 300, rollBackBelow_V: 500, max_V: 1500, torqueCap_Nm: 120 });

  it("a share of its torque by how far the voltage lies in its band", () => {
    // 400 V are half way from 300 to 500.
    expect(asked(whole).over_Nm).toBeCloseTo(10, 4);
  });
  it("a share of what a standing start has ramped up to", () => {
    expect(asked(controller({ torqueCap_Nm: 120 }), { ramp_frac: 0.25 }).over_Nm).toBeCloseTo(40, 9);
    expect(asked(whole, { ramp_frac: 0.25 }).over_Nm).toBeCloseTo(55, 4);
  });
  it("a share of the motor's peak torque where that is less than its own", () => {
    const motor = { envelope: { kind: "peak" as const, torque_Nm: 100, power_kW: 2000 } };
    expect(asked({ motor, ...controller({ torqueCap_Nm: 300 }) }, { ramp_frac: 0.5 }).over_Nm).toBeCloseTo(20, 9);
    expect(asked({ motor, ...controller({}) }, { ramp_frac: 0.5 }).over_Nm).toBeCloseTo(20, 9);
  });
});

it("counts a watt as the torque that makes it at a speed, near rest as at 1 rad/s", () => {
  expect([200, 1, 0.5, 0].map(torquePerWatt)).toEqual([1 / 200, 1, 1, 1]);
});

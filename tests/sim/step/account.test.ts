import { describe, expect, it } from "vitest";
import { account } from "../../../sim/step/account.ts";
import { LIMITS, MOTOR, NONE } from "../../../sim/step/limits.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { createTotals } from "../../../sim/step/totals.ts";
import { bareJob } from "../../support/bareCar.ts";

/** An interval of which 4 s and 30 m were driven, at forces and powers that no other entry has. */
const driving = {
  driven_s: 4,
  driven_m: 30,
  drag_N: 110,
  rolling_N: 130,
  climb_N: 170,
  inertia_N: 190,
  wheel_N: 630,
  driveline_N: 630,
  brake_N: 0,
  motor_radps: 50,
  rotor_Nm: 3,
  motor_Nm: 40,
  loss_W: 290,
  controller_W: 2290,
  current_A: 6,
  resistance_ohm: 0.5,
  terminal_V: 397,
  limit: MOTOR,
};
/** One of 2 s and 20 m in which the car brakes. */
const braking = {
  ...driving,
  driven_s: 2,
  driven_m: 20,
  inertia_N: -1210,
  wheel_N: -800,
  driveline_N: -500,
  brake_N: -300,
  motor_Nm: -35,
  loss_W: 250,
  controller_W: -1500,
  current_A: -3,
  terminal_V: 402,
  limit: NONE,
};

/**
 * What intervals add up to, in a car of one gear (20 rad/s a metre a second, 80 %) with 2 Nm of drag in the box, 12 N of it at the
 * wheels, accessories of 1000 W of which 900 W are served, cells at 400 V.
 */
function accounted(...intervals: Partial<typeof driving>[]) {
  const job = bareJob({
    vehicle: { roadLoad: { kind: "physical", drag_coeff: 0, frontalArea_m2: 0, wheelDrag_Nm: 3.6 } },
    driveline: { gears: [{ name: "only", gear_ratio: 1, efficiency_frac: 0.8 }], noLoadDrag_Nm: 2 },
    accessories: { standing_W: 1000 },
  });
  const context = createRunContext(prepare(job, job.packs[0]), 0.6);
  context.start.pack.openCircuit_V = 400;
  context.start.wanted_W = context.model.accessories_W;
  context.start.accessories_W = 900;
  const totals = createTotals(context.state);
  for (const interval of intervals) {
    Object.assign(context.interval, driving, interval);
    account(context, totals);
  }
  return { totals, context };
}

describe("the ledger adds", () => {
  const { ledger } = accounted({}, braking).totals;

  it("what each force of the road took over its way", () => {
    expect(ledger.aero_J).toBeCloseTo(110 * 30 + 110 * 20, 9);
    expect(ledger.rolling_J).toBeCloseTo(130 * 30 + 130 * 20, 9);
    expect(ledger.climb_J).toBeCloseTo(170 * 30 + 170 * 20, 9);
  });
  it("what went into the car's speed and its rotor's", () => {
    expect(ledger.speed_J).toBeCloseTo(190 * 30 - 1210 * 20 + 3 * 50 * (4 + 2), 9);
  });
  it("drag at the wheels and in the box, and what the meshes lose: of the force they pass when driving, of what they take on the overrun", () => {
    expect(ledger.driveline_J).toBeCloseTo((12 + 630 / 4) * 30 + (12 + 500 / 5) * 20 + 2 * 50 * (4 + 2), 9);
  });
  it("the motor's losses, the pack's heat and the accessories that were served", () => {
    expect(ledger.motor_J).toBeCloseTo(290 * 4 + 250 * 2, 9);
    expect(ledger.packHeat_J).toBeCloseTo(36 * 0.5 * 4 + 9 * 0.5 * 2, 9);
    expect(ledger.accessories_J).toBeCloseTo(900 * 6, 9);
  });
  it("what the friction brakes took, as a number above zero", () => {
    expect(ledger.frictionBrake_J).toBeCloseTo(300 * 20, 9);
  });
  it("what left the cells at their own voltage", () => {
    expect(ledger.total_J).toBeCloseTo(400 * 6 * 4 - 400 * 3 * 2, 9);
  });
});

it("counts no drag in a box that stands still", () => {
  const still = { driven_m: 0, motor_radps: 0 };
  expect(accounted(still).totals.ledger.driveline_J).toBe(0);
});

describe("the totals add", () => {
  const { totals } = accounted({}, braking, { ...braking, driven_s: 1, driven_m: 5 });

  it("time and way", () => {
    expect(totals.time_s).toBe(7);
    expect(totals.distance_m).toBe(55);
  });
  it("work at the wheels only where it drives the car", () => {
    expect(totals.wheelPositive_J).toBeCloseTo(630 * 30, 9);
  });
  it("what passed the terminals, either way", () => {
    expect(totals.terminal_J).toBeCloseTo(397 * 6 * 4 - 402 * 3 * 3, 9);
  });
  it("what the controller gave back, as a number above zero, and nothing that it took", () => {
    expect(totals.regen_J).toBeCloseTo(1500 * 3, 9);
    expect(accounted({ controller_W: 0.5 }).totals.regen_J).toBe(0);
  });
  it("accessories that were not served", () => {
    expect(totals.shed_J).toBeCloseTo(100 * 7, 9);
  });
  it("the squared current over time", () => {
    expect(totals.current_A2s).toBeCloseTo(36 * 4 + 9 * 3, 9);
  });
  it("the seconds under each limit", () => {
    expect(totals.limited_s[MOTOR]).toBe(4);
    expect(totals.limited_s[NONE]).toBe(3);
    expect([...totals.limited_s].reduce((a, b) => a + b)).toBe(7);
    expect(totals.limited_s).toHaveLength(LIMITS.length);
  });
});

describe("the extremes", () => {
  it("are those of the largest interval, wherever it stands in the run", () => {
    const small = { current_A: 2, motor_Nm: 10, terminal_V: 399 };
    for (const order of [
      [small, {}, braking],
      [braking, {}, small],
    ]) {
      const { totals } = accounted(...order);
      expect(totals.dischargePeak_A).toBe(6);
      expect(totals.chargePeak_A).toBe(3);
      expect(totals.motorPeak_Nm).toBe(40);
      expect(totals.motorPeak_W).toBe(40 * 50);
      expect(totals.lowest_V).toBe(397);
    }
  });
  it("of a run that only brakes are no current drawn, no torque and no power", () => {
    const { totals } = accounted(braking);
    expect([totals.dischargePeak_A, totals.motorPeak_Nm, totals.motorPeak_W]).toEqual([0, 0, 0]);
  });
  it("of a car that stands are no speed, no power and no current but its own", () => {
    const { totals } = accounted({ ...driving, driven_m: 0, motor_radps: 0, motor_Nm: 0 });
    expect([totals.motorPeak_radps, totals.motorPeak_W, totals.motorPeak_Nm]).toEqual([0, 0, 0]);
  });
  it("of a run that only drives are no current charged", () => {
    expect(accounted({}).totals.chargePeak_A).toBe(0);
  });
  it("of speed, charge and heat are those of the states at the ends of its intervals", () => {
    const { totals, context } = accounted();
    const { state } = context;
    Object.assign(context.interval, driving);
    for (const [speed_mps, soc_frac, motor_K, pack_K] of [
      [5, 0.55, 300, 310],
      [9, 0.5, 350, 330],
      [7, 0.52, 340, 320],
    ]) {
      state.speed_mps = speed_mps;
      state.pack.soc_frac = soc_frac;
      state.motor_K = motor_K;
      state.pack.temperature_K = pack_K;
      account(context, totals);
    }
    expect(totals.motorPeak_radps).toBeCloseTo(9 * 20, 9);
    expect(totals.lowestSoc_frac).toBe(0.5);
    expect(totals.hottestMotor_K).toBe(350);
    expect(totals.hottestPack_K).toBe(330);
  });
  it("of charge and heat are those it began with where it never was lower or hotter", () => {
    const { totals, context } = accounted();
    Object.assign(context.interval, driving);
    context.state.pack.soc_frac = 0.7;
    context.state.motor_K = 280;
    context.state.pack.temperature_K = 281;
    account(context, totals);
    expect([totals.lowestSoc_frac, totals.hottestMotor_K, totals.hottestPack_K]).toEqual([0.6, 293.15, 293.15]);
  });
});

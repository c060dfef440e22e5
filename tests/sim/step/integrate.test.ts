import { describe, expect, it } from "vitest";
import { integrate } from "../../../sim/step/integrate.ts";
import { modelWith } from "../../../sim/step/model.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob } from "../../support/bareCar.ts";

function contextOf() {
  const heat = { capacity_kJpK: 1, cooling_WpK: 0, derateFrom_degC: 100, derateTo_degC: 140 };
  const job = bareJob({ motor: { heat }, module: { capacity_Ah: 1 } });
  const lump = { perCapacity_KpJ: 1 / 10_000, cooling_WpK: 0 };
  const cabin = { lump, power_W: 3000, wanted_K: 300, isPreheated: false, trip_m: 1000 };
  const context = createRunContext(modelWith(prepare(job, job.packs[0]), { cabin }), 0.5);
  Object.assign(context.start, { heater_W: 2000, wanted_W: 2500, accessories_W: 1250 });
  const driven = { driven_frac: 1, driven_s: 4, driven_m: 60, end_mps: 20, loss_W: 500, current_A: 9 };
  Object.assign(context.interval, driven);
  context.state.speed_mps = 10;
  return context;
}

it("moves place, speed, charge and the motor's heat on", () => {
  const context = contextOf();
  integrate(context);
  expect(context.state).toMatchObject({ distance_m: 60, speed_mps: 20 });
  // 9 A for 4 s of 3600 C; 500 W for 4 s into 1 kJ/K.
  expect(context.state.pack.soc_frac).toBeCloseTo(0.49, 12);
  expect(context.state.motor_K - context.model.ambient_K).toBeCloseTo(2, 9);
});

it("stops at a speed on the way where only a part was driven", () => {
  const context = contextOf();
  Object.assign(context.interval, { driven_frac: 0.25, driven_s: 1, driven_m: 15 });
  integrate(context);
  expect(context.state.speed_mps).toBe(12.5);
});

describe("the cabin", () => {
  it("warms by what its heater was given", () => {
    const context = contextOf();
    integrate(context);
    // Half of 2000 W for 4 s into 10 kJ/K.
    expect(context.state.cabin_K - context.model.ambient_K).toBeCloseTo(0.4, 9);
    expect(context.state.trip_m).toBe(60);
  });
  it("is cold again after a trip's length", () => {
    const context = contextOf();
    context.state.trip_m = 950;
    integrate(context);
    expect(context.state.trip_m).toBe(0);
    expect(context.state.cabin_K).toBe(context.model.ambient_K);
  });
});

import { expect, it } from "vitest";
import { beginInterval } from "../../../sim/step/beginInterval.ts";
import { modelWith } from "../../../sim/step/model.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

function modelOf(changes: Changes) {
  const job = bareJob(changes);
  return prepare(job, job.packs[0]);
}

it("serves the accessories as far as the pack feeds them", () => {
  // 2 A at 400 V behind next to no resistance.
  const discharge = { continuous_A: 2, peak_A: 2, peak_s: 0 };
  const context = createRunContext(modelOf({ accessories: { standing_W: 1000 }, module: { discharge } }), 0.5);
  beginInterval(context, 0, 1);
  expect(context.start.wanted_W).toBe(1000);
  expect(context.start.accessories_W).toBeCloseTo(800, 4);
});

it("asks for a heater beside them until the cabin is warm", () => {
  const lump = { perCapacity_KpJ: 1 / 50_000, cooling_WpK: 100 };
  const cabin = { lump, power_W: 3000, wanted_K: 293.15, isPreheated: false, trip_m: 10_000 };
  const cold = modelWith(modelOf({ accessories: { standing_W: 200 }, environment: { temperature_degC: 0 } }), {
    cabin,
  });
  const context = createRunContext(cold, 0.5);
  beginInterval(context, 0, 1);
  expect(context.start).toMatchObject({ heater_W: 3000, wanted_W: 3200 });
  // At the wanted 20 K above the air, what it loses: 100 W/K.
  context.state.cabin_K = 293.15;
  beginInterval(context, 0, 1);
  expect(context.start.heater_W).toBeCloseTo(2000, 6);
});

it("holds the motor back by its heat at the start", () => {
  const heat = { capacity_kJpK: 20, cooling_WpK: 5, derateFrom_degC: 100, derateTo_degC: 140 };
  const context = createRunContext(modelOf({ motor: { heat } }), 0.5);
  context.state.motor_K = 273.15 + 110;
  beginInterval(context, 0, 1);
  expect(context.start.motorDerate_frac).toBeCloseTo(0.75, 9);
});

it("chooses the gear by the mean of the speed now and the one asked for", () => {
  const gears = ["low", "high"].map((name, i) => ({ name, gear_ratio: 2 - i, efficiency_frac: 1 }));
  const shifting = { kind: "bySpeed" as const, gears: ["low", "high"], up_kmh: [36] };
  const gearAt = (speed_mps: number, by_mps: number) => {
    const context = createRunContext(modelOf({ driveline: { gears, shifting } }), 0.5);
    context.state.speed_mps = speed_mps;
    beginInterval(context, by_mps, 1);
    return context.start.gear;
  };
  expect([gearAt(9, 10), gearAt(9, 12)]).toEqual([0, 1]);
});

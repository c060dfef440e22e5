import { expect, it } from "vitest";
import { prepare } from "../../../sim/step/prepare.ts";
import { beginRoad, beginRun, createRunContext, servedHeater_W } from "../../../sim/step/runContext.ts";
import { bareJob } from "../../support/bareCar.ts";

const job = bareJob({ environment: { temperature_degC: 5, pack_degC: 15 } });
const model = prepare(job, job.packs[0]);

it("stands at the beginning of a road at its first height and speed, charge and warmth going on", () => {
  const context = createRunContext(model, 0.7);
  const { state } = context;
  Object.assign(state, { distance_m: 500, leg: 3, elevation_m: 9, motor_K: 330 });
  beginRoad(context, { distance_m: Float64Array.of(0, 10), elevation_m: Float64Array.of(120, 121) }, 4);
  expect(state).toMatchObject({ distance_m: 0, leg: 0, elevation_m: 120, speed_mps: 4, motor_K: 330 });
  beginRoad(context, undefined, 0);
  expect(state.elevation_m).toBe(0);
});

it("begins another run in the memory of the last as if it were the first", () => {
  const context = createRunContext(model, 0.7);
  const { state, scratch } = context;
  Object.assign(state, { speed_mps: 9, distance_m: 500, motor_K: 330, cabin_K: 300, trip_m: 5 });
  Object.assign(state.pack, { soc_frac: 0.2, temperature_K: 310, dischargeUse_A2s: 8 });
  for (const heat of [scratch.motorHeat, scratch.packHeat, scratch.cabinHeat]) heat.dt_s = 1;
  context.ramp_frac = 0.3;
  beginRun(context, model, 0.9);
  const fresh = createRunContext(model, 0.9);
  expect(state).toEqual(fresh.state);
  expect([scratch.motorHeat.dt_s, scratch.packHeat.dt_s, scratch.cabinHeat.dt_s, context.ramp_frac]).toEqual([
    0, 0, 0, 1,
  ]);
});

it("serves a heater its share of what the accessories are served", () => {
  const { start } = createRunContext(model, 0.7);
  expect(servedHeater_W({ ...start, heater_W: 600, wanted_W: 1000, accessories_W: 500 })).toBe(300);
  expect(servedHeater_W({ ...start, heater_W: 600, wanted_W: 1000, accessories_W: 1000 })).toBe(600);
  expect(servedHeater_W({ ...start, heater_W: 0, wanted_W: 0, accessories_W: 0 })).toBe(0);
});

import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { correctedJob } from "../../../../sim/plan/measured/correctedJob.ts";
import type { Fitted } from "../../../../sim/plan/measured/describeFit.ts";
import { fitCar } from "../../../../sim/plan/measured/fitCar.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { samplesOf } from "./logsByHand.ts";

const job = inventedJob();
const noErrors = {
  count: 0,
  restSquared: new Float64Array(),
  fromSpeed_Ns: new Float64Array(),
  toSpeed_Ns: new Float64Array(),
  isMet: new Uint8Array(),
  from_s: new Float64Array(),
  to_s: new Float64Array(),
  metre_J: 0,
  from_m: new Float64Array(),
  to_m: new Float64Array(),
  throughput_J: new Float64Array(),
  usual: { speed_mps: 0.1, elevation_m: 1, lasts_s: 30, lasts_m: 1e9, model_frac: 0.03 },
};
/** A log without a segment, of which nothing is fitted. */
const nothing = fitCar({
  model: prepare(job, job.packs[0]),
  parts: [],
  startSoc_frac: 0.9,
  samples: samplesOf([], []),
  parameters: [],
  observations: {
    segments: [],
    energy_J: new Float64Array(),
    time_s: new Float64Array(),
    segmentOf: new Int32Array(),
    errors: noErrors,
  },
});

/** The job with one value fitted, half its band a tenth. */
function corrected(id: Fitted["id"], value: number, of: Job = job): Job {
  const half = id === "accessories" ? 20 : 0.1;
  const fitted = {
    id,
    value,
    low: value - half,
    high: value + half,
    ownHalf: half,
    start: id === "accessories" ? 0 : 1,
    before: 0.3,
  } as Fitted;
  return correctedJob(of, 0, { ...nothing, fitted: [fitted] }, "log of 3 March");
}

it("is the job itself where nothing was fitted", () => {
  expect(nothing.fitted).toEqual([]);
  expect(correctedJob(job, 0, nothing, "a log")).toEqual(job);
});

describe("a corrected value", () => {
  it("says which log it is from, with half its band as a share of it", () => {
    const { origins, vehicle } = corrected("rolling", 1.25);
    expect(vehicle.tyres.rolling_coeff).toBeCloseTo(0.015, 12);
    expect(origins["vehicle.tyres.rolling_coeff"]).toEqual({
      from: "measured",
      plusMinus_frac: expect.closeTo(0.1 / 1.25, 9),
      note: "log of 3 March",
    });
  });
  it("of accessories is added behind the converter, never below nothing, to 5 %", () => {
    // 60 W and 90 W more at the pack: 81 W behind a converter of 0.9.
    const { accessories, origins } = corrected("accessories", 90);
    expect(accessories.standing_W).toBeCloseTo(141, 9);
    expect(origins["accessories.standing_W"]?.plusMinus_frac).toBe(0.05);
    expect(corrected("accessories", -500).accessories.standing_W).toBe(0);
  });
});

describe("where a value stands in the job", () => {
  const withLoad = (roadLoad: Job["vehicle"]["roadLoad"]): Job => ({ ...job, vehicle: { ...job.vehicle, roadLoad } });
  const coastDown = withLoad({
    kind: "coastDown",
    f0_N: 200,
    f1_Npkmh: 1,
    f2_Npkmh2: 0.04,
    mass_kg: 1000,
  });
  it("is the coefficient of the tyres with its rise, or the first two terms of a coast-down", () => {
    const rising = { ...job, vehicle: { ...job.vehicle, tyres: { ...job.vehicle.tyres, rollingRise_coeff: 0.004 } } };
    expect(corrected("rolling", 1.5, rising).vehicle.tyres).toMatchObject({
      rolling_coeff: expect.closeTo(0.018, 12),
      rollingRise_coeff: expect.closeTo(0.006, 12),
    });
    expect(corrected("rolling", 1.5, coastDown).vehicle.roadLoad).toMatchObject({
      f0_N: 300,
      f1_Npkmh: 1.5,
      f2_Npkmh2: 0.04,
    });
  });
  it("is the drag coefficient, the drag area, or the third term of a coast-down", () => {
    expect(corrected("drag", 2).vehicle.roadLoad).toMatchObject({ drag_coeff: 0.9, frontalArea_m2: 1.8 });
    const area = withLoad({ kind: "dragArea", dragArea_m2: 0.7, wheelDrag_Nm: 0 });
    expect(corrected("drag", 2, area).vehicle.roadLoad).toMatchObject({ dragArea_m2: 1.4 });
    expect(corrected("drag", 2, coastDown).vehicle.roadLoad).toMatchObject({ f0_N: 200, f2_Npkmh2: 0.08 });
  });
  it("is every limit of regen that there is, and none that there is not", () => {
    const regen = { ...job.controller.regen, power_kW: 10, current_A: 80, wheelForce_N: 1000 };
    const all = corrected("regen", 0.5, { ...job, controller: { ...job.controller, regen } }).controller.regen;
    expect(all).toMatchObject({ torque_Nm: 20, power_kW: 5, current_A: 40, wheelForce_N: 500 });
    expect(corrected("regen", 0.5).controller.regen).not.toHaveProperty("power_kW");
  });
  it("is every term of a law of losses", () => {
    const loss = {
      kind: "fourTerm",
      copper_coeff: 0.4,
      iron_coeff: 0.2,
      windage_coeff: 1e-6,
      constant_W: 100,
    } as const;
    const lossy = { ...job, motor: { ...job.motor, loss } };
    expect(corrected("motorLoss", 1.5, lossy).motor.loss).toMatchObject({
      copper_coeff: expect.closeTo(0.6, 12),
      iron_coeff: expect.closeTo(0.3, 12),
      windage_coeff: expect.closeTo(1.5e-6, 15),
      constant_W: expect.closeTo(150, 9),
    });
  });
  it("is the car's own mass, packs and load weighed by themselves", () => {
    const { testMass_kg } = prepare(job, job.packs[0]);
    expect(corrected("mass", 1.1).vehicle.kerb_kg).toBeCloseTo(900 + 0.1 * testMass_kg, 9);
    const weighed = { ...job, vehicle: { ...job.vehicle, converted_kg: 800 } };
    const after = corrected("mass", 0.9, weighed).vehicle;
    expect(after.converted_kg).toBeCloseTo(800 - 0.1 * prepare(weighed, weighed.packs[0]).testMass_kg, 9);
    expect(after.kerb_kg).toBe(900);
  });
  it("is nowhere for the ammeter", () => {
    expect(corrected("gain", 1.1)).toEqual(job);
    expect(corrected("zero", 1.1)).toEqual(job);
  });
});

import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { noChange } from "../../../../sim/plan/measured/adjustModel.ts";
import { changeOf, type ParameterId, parametersOf } from "../../../../sim/plan/measured/parameters.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
// Half of a band that holds nine of ten is 1.645 standard deviations of the normal law.
const SIGMA = 1.645;

function parameter(id: ParameterId, changes: Partial<Job> = {}) {
  const changed = { ...job, ...changes };
  return parametersOf(changed, prepare(changed, changed.packs[0])).find((each) => each.id === id);
}
const offBefore = (...of: Parameters<typeof parameter>) => parameter(...of)?.before;
const guessed = (...bands: readonly (readonly [path: string, plusMinus_frac: number])[]): Partial<Job> => ({
  origins: Object.fromEntries(bands.map(([path, plusMinus_frac]) => [path, { from: "guessed", plusMinus_frac }])),
});

describe("what a log may correct, and how far it was thought to be off before", () => {
  it("is at least as far as built cars are: 0.3 of rolling, 0.2 of drag, half of a regen limit", () => {
    expect([offBefore("rolling"), offBefore("drag"), offBefore("regen")]).toEqual([0.3, 0.2, 0.5]);
    expect(offBefore("rolling", guessed(["vehicle.tyres.rolling_coeff", 0.2]))).toBe(0.3);
    expect(offBefore("drag", guessed(["vehicle.roadLoad.drag_coeff", 0.1]))).toBe(0.2);
  });
  it("is the job's own band where that is wider, of a product both", () => {
    expect(offBefore("rolling", guessed(["vehicle.tyres.rolling_coeff", 0.8]))).toBeCloseTo(0.8 / SIGMA, 9);
    const both = guessed(["vehicle.roadLoad.drag_coeff", 0.3], ["vehicle.roadLoad.frontalArea_m2", 0.4]);
    expect(offBefore("drag", both)).toBeCloseTo(0.5 / SIGMA, 9);
    // What stands in another place of the job is no band of these.
    expect(
      offBefore("drag", guessed(["vehicle.roadLoad.drag_coeff_", 0.9], ["x.vehicle.roadLoad.drag_coeff", 0.9])),
    ).toBe(0.2);
  });
  it("is 120 W of accessories or three quarters of them, and they never draw less than nothing", () => {
    // 60 W behind a converter of 0.9: 66.7 W; 360 W: 400 W, of which three quarters are 300.
    expect(offBefore("accessories")).toBe(120);
    expect(parameter("accessories")?.low).toBeCloseTo(-60 / 0.9, 9);
    const more = { accessories: { ...job.accessories, standing_W: 360 } };
    expect(offBefore("accessories", more)).toBeCloseTo(300, 9);
    expect(parameter("accessories", more)?.low).toBeCloseTo(-400, 9);
  });
  it("is a regen limit only where there is one", () => {
    const { torque_Nm: _, ...unlimited } = job.controller.regen;
    expect(parameter("regen", { controller: { ...job.controller, regen: unlimited } })).toBeUndefined();
    expect(
      parameter("regen", { controller: { ...job.controller, regen: { ...job.controller.regen, isOn: false } } }),
    ).toBeUndefined();
    const byPower = { ...job.controller, regen: { ...unlimited, power_kW: 10 } };
    expect(parameter("regen", { controller: byPower })).toBeDefined();
    const byForce = { ...job.controller, regen: { ...unlimited, wheelForce_N: 900 } };
    expect(parameter("regen", { controller: byForce })).toBeDefined();
  });
  it("is what a clamp is good to: 1 %, and a tenth of an ampere of zero", () => {
    expect(offBefore("gain")).toBeCloseTo(0.01 / SIGMA, 9);
    expect(offBefore("zero")).toBeCloseTo(0.1 / SIGMA, 9);
  });
});

describe("what else moves the same figures", () => {
  it("are losses of the motor: 0.15, or the job's band", () => {
    expect(offBefore("motorLoss")).toBe(0.15);
    expect(offBefore("motorLoss", guessed(["motor.loss.efficiency_frac", 0.1]))).toBeCloseTo(0.1 / SIGMA, 9);
  });
  it("are losses of gears: 0.2, or the widest band of an efficiency over what is lost", () => {
    expect(offBefore("meshLoss")).toBe(0.2);
    // 0.96 x 0.96 lose 0.0784; 2 % of efficiency over that.
    const banded = guessed(["driveline.gears.0.efficiency_frac", 0.01], ["driveline.finalDriveEfficiency_frac", 0.02]);
    expect(offBefore("meshLoss", banded)).toBeCloseTo(0.02 / SIGMA / (1 - 0.96 * 0.96), 9);
    expect(offBefore("meshLoss", guessed(["driveline.gears.0.efficiency_frac", 0.5]))).toBe(1);
    const whole: Partial<Job> = {
      driveline: { ...job.driveline, wholeEfficiency_frac: 0.9 },
      ...guessed(["driveline.wholeEfficiency_frac", 0.02]),
    };
    expect(offBefore("meshLoss", whole)).toBeCloseTo(0.02 / SIGMA / 0.1, 9);
    const lossless: Partial<Job> = {
      driveline: { ...job.driveline, wholeEfficiency_frac: 1 },
      ...guessed(["driveline.wholeEfficiency_frac", 0.02]),
    };
    expect(offBefore("meshLoss", lossless)).toBe(0.2);
  });
  it("is the mass: 2 %, or the job's bands of what it adds up from, as squares add", () => {
    expect(offBefore("mass")).toBe(0.02);
    // 900 kg to 4 % are 36 kg, 150 kg of load to 0.18 are 27 kg: 45 kg of the mass as driven.
    const { testMass_kg } = prepare(job, job.packs[0]);
    const banded = guessed(["vehicle.kerb_kg", 0.04], ["vehicle.load_kg", 0.18]);
    expect(offBefore("mass", banded)).toBeCloseTo(45 / SIGMA / testMass_kg, 9);
  });
});

describe("the change that values mean", () => {
  it("is of those that are named, all others as in the job", () => {
    expect(changeOf([], [])).toEqual(noChange);
    expect(changeOf(["drag", "accessories", "mass"], [1.2, 80, 1.03])).toEqual({
      ...noChange,
      drag_ratio: 1.2,
      accessories_W: 80,
      mass_ratio: 1.03,
    });
    expect(changeOf(["rolling", "regen", "motorLoss", "meshLoss"], [1.1, 0.5, 1.3, 0.9])).toEqual({
      ...noChange,
      rolling_ratio: 1.1,
      regen_ratio: 0.5,
      motorLoss_ratio: 1.3,
      meshLoss_ratio: 0.9,
    });
  });
});

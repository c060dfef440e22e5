import { describe, expect, it } from "vitest";
import type { Loss } from "../../../../sim/motor/loss.ts";
import { adjustModel, type Change, noChange } from "../../../../sim/plan/measured/adjustModel.ts";
import type { Model } from "../../../../sim/step/model.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob();
const model = prepare(job, job.packs[0]);
const adjusted = (change: Partial<Change>, of: Model = model) => adjustModel(of, { ...noChange, ...change });
const withLoss = (loss: Loss): Model => ({ ...model, motor: { ...model.motor, loss } });

describe("a car that differs from its job", () => {
  it("is the same car where nothing differs", () => {
    expect(model).toMatchObject(adjusted({}));
  });
  it("rolls as much harder in all that resists rolling, at no other drag", () => {
    const { road } = adjusted({ rolling_ratio: 1.5 });
    expect(road.rollingWeight_N).toBeCloseTo(1.5 * model.road.rollingWeight_N, 9);
    expect(road.rollingWeight_Npmps2).toBeCloseTo(1.5 * model.road.rollingWeight_Npmps2, 12);
    expect(road.rollingFixed_N).toBeCloseTo(1.5 * model.road.rollingFixed_N, 9);
    expect(road.rolling_Npmps).toBeCloseTo(1.5 * model.road.rolling_Npmps, 9);
    expect(road.drag_Npmps2).toBe(model.road.drag_Npmps2);
    expect(road.mass_kg).toBe(model.road.mass_kg);
  });
  it("has as much more drag, and that alone", () => {
    expect(adjusted({ drag_ratio: 1.3 })).toEqual({
      ...adjusted({}),
      road: { ...model.road, drag_Npmps2: expect.closeTo(1.3 * model.road.drag_Npmps2, 12) },
    });
  });
  it("is as much heavier in its inertia, on hills and on its tyres", () => {
    const heavy = adjusted({ mass_ratio: 1.1 });
    expect(heavy.testMass_kg).toBeCloseTo(1.1 * model.testMass_kg, 9);
    expect(heavy.inertia_kg).toBeCloseTo(1.1 * model.inertia_kg, 9);
    expect(heavy.road.mass_kg).toBeCloseTo(1.1 * model.road.mass_kg, 9);
    expect(heavy.road.weight_N).toBeCloseTo(1.1 * model.road.weight_N, 9);
    expect(heavy.road.rollingWeight_N).toBeCloseTo(1.1 * model.road.rollingWeight_N, 9);
    expect(heavy.road.rolling_Npmps).toBe(model.road.rolling_Npmps);
  });
  it("draws so many watts more, and never less than nothing", () => {
    expect(adjusted({ accessories_W: 120 }).accessories_W).toBeCloseTo(model.accessories_W + 120, 9);
    expect(adjusted({ accessories_W: -1e6 }).accessories_W).toBe(0);
  });
  it("brakes by its motor to so many times every limit, the gear's among them", () => {
    const limited: Model = { ...model, controller: { ...model.controller, regen_Nm: 40, regen_W: 9000, regen_A: 80 } };
    const { controller, gears } = adjusted(
      { regen_ratio: 0.5 },
      { ...limited, gears: limited.gears.map((gear) => ({ ...gear, regen_Nm: 30 })) },
    );
    expect([controller.regen_Nm, controller.regen_W, controller.regen_A]).toEqual([20, 4500, 40]);
    for (const gear of gears) expect(gear.regen_Nm).toBe(15);
  });
  it("loses so many times what its gears lost: of 0.9, twice that is 0.8", () => {
    const geared: Model = { ...model, gears: model.gears.map((gear) => ({ ...gear, efficiency_frac: 0.9 })) };
    for (const gear of adjusted({ meshLoss_ratio: 2 }, geared).gears) expect(gear.efficiency_frac).toBeCloseTo(0.8, 12);
  });
});

describe("losses of the motor", () => {
  it("by a law are so many times each of its terms", () => {
    const law = { copper_coeff: 1, iron_coeff: 2, windage_coeff: 3, constant_W: 4 };
    expect(adjusted({ motorLoss_ratio: 3 }, withLoss({ form: "fourTerm", law })).motor.loss).toEqual({
      form: "fourTerm",
      law: { copper_coeff: 3, iron_coeff: 6, windage_coeff: 9, constant_W: 12 },
    });
  });
  it("by one efficiency are so many times what is lost of what goes through", () => {
    // 0.8 loses a quarter of what leaves it; twice that is a half: 1/1.5.
    const { loss } = adjusted({ motorLoss_ratio: 2 }, withLoss({ form: "flat", efficiency_frac: 0.8 })).motor;
    expect(loss.form === "flat" && loss.efficiency_frac).toBeCloseTo(1 / 1.5, 12);
  });
});

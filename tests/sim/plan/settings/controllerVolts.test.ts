import { describe, expect, it } from "vitest";
import { controllerVolts } from "../../../../sim/plan/settings/controllerVolts.ts";
import { type BasisChanges, basisOf, rowOf } from "./basisByHand.ts";

const row = (key: string, changes: BasisChanges = {}) => rowOf(controllerVolts(basisOf(changes)), key);
const controller = (changes: NonNullable<BasisChanges["controller"]>): BasisChanges => ({ controller: changes });

describe("the lowest and the highest pack voltage", () => {
  it("are the cells' where the controller goes further", () => {
    expect(row("lowestVolts").slice(0, 2)).toEqual(["80 V", "32 cells at 2.5 V"]);
    expect(row("highestVolts")).toEqual(["117 V", "32 cells at 3.65 V", ""]);
  });
  it("are the controller's where it stops before the cells do, which a full pack then destroys", () => {
    expect(row("lowestVolts", controller({ min_V: 90 })).slice(0, 2)).toEqual([
      "90 V",
      "the controller's own, above the cells' 80 V",
    ]);
    expect(row("highestVolts", controller({ max_V: 110 }))).toEqual([
      "110 V",
      "the controller's own, below the full pack's 117 V",
      "This pack destroys the controller when full: do not connect it.",
    ]);
    expect(row("highestVolts", controller({ max_V: 116.8 }))[2]).toBe("");
  });
});

describe("where torque falls", () => {
  it("is a tenth of the span above the lowest, where nothing is set", () => {
    // 80 + 0.1 x 36.8; 90 + 0.1 x (110 - 90).
    expect(row("torqueRollBack").slice(0, 2)).toEqual([
      "83.7 V, none at 80 V",
      "a tenth of the span above the lowest: common practice, no source",
    ]);
    expect(row("torqueRollBack", controller({ min_V: 90, max_V: 110 }))[0]).toBe("92 V, none at 90 V");
  });
  it("is as set where that lies within the pack's volts, and not where it lies at or beyond an end", () => {
    const below = (rollBackBelow_V: number) => row("torqueRollBack", controller({ rollBackBelow_V })).slice(0, 2);
    expect(below(90)).toEqual(["90 V, none at 80 V", "in the job"]);
    expect(below(80)[0]).toBe("83.7 V, none at 80 V");
    expect(below(120)).toEqual([
      "83.7 V, none at 80 V",
      "the job's 120 V lies outside this pack; a tenth of the span: common practice, no source",
    ]);
  });
});

describe("where regen falls", () => {
  it("is 3 % below full, where nothing is set", () => {
    // 0.97 x 116.8 = 113.3.
    expect(row("regenRollBack").slice(0, 2)).toEqual([
      "113 V, none at 117 V",
      "3 % below full: common practice, no source",
    ]);
  });
  it("is as set where that lies within the pack's volts", () => {
    const above = (rollBackAbove_V: number) => row("regenRollBack", controller({ rollBackAbove_V })).slice(0, 2);
    expect(above(100)).toEqual(["100 V, none at 117 V", "in the job"]);
    expect(above(140)).toEqual([
      "113 V, none at 117 V",
      "the job's 140 V lies outside this pack; 3 % below full: common practice, no source",
    ]);
    expect(above(75)[0]).toBe("113 V, none at 117 V");
  });
});

describe("the battery current of driving", () => {
  it("is the most that the pack gives, beside what the road asks for", () => {
    expect(row("batteryDrive")).toEqual([
      "400 A for 30 s, 200 A for hours",
      "the most that this pack gives; the road asks for 120 A",
      "",
    ]);
  });
  it("is the controller's where that is less, for hours too, and never more than the cells stand", () => {
    expect(row("batteryDrive", controller({ current_A: 300 }))).toEqual([
      "300 A for 30 s, 200 A for hours",
      "in the job; the pack gives 400 A",
      "",
    ]);
    expect(row("batteryDrive", controller({ current_A: 150 }))[0]).toBe("150 A for 30 s, 150 A for hours");
    expect(row("batteryDrive", controller({ current_A: 400 })).slice(1)).toEqual([
      "in the job; the pack gives 400 A",
      "",
    ]);
    expect(row("batteryDrive", controller({ current_A: 401 }))).toEqual([
      "400 A for 30 s, 200 A for hours",
      "the most that this pack gives; the road asks for 120 A",
      "The controller's own 401 A is more than the cells stand.",
    ]);
  });
});

describe("the battery current of braking", () => {
  const { regen } = basisOf().job.controller;
  const braking = (changes: Partial<typeof regen>, motor: BasisChanges["motor"] = {}) =>
    row("batteryRegen", { controller: { regen: { ...regen, ...changes } }, motor }).slice(0, 2);
  it("is what the pack takes, or what the job allows of it", () => {
    expect(braking({})).toEqual([
      "150 A for 10 s, 100 A for hours; none at 0 °C and below",
      "the most that this pack takes",
    ]);
    expect(braking({ current_A: 120 })).toEqual([
      "120 A for 10 s, 100 A for hours; none at 0 °C and below",
      "in the job; the pack takes 150 A",
    ]);
    expect(braking({ current_A: 60 })[0]).toMatch(/^60 A for 10 s, 60 A for hours/);
    expect(braking({ current_A: 150 })[1]).toBe("in the job; the pack takes 150 A");
    expect(braking({ current_A: 151 })[1]).toBe("the most that this pack takes");
  });
  it("is none where regen is off in the job, or the motor cannot", () => {
    expect(braking({ isOn: false })).toEqual(["none: regen is off", "in the job"]);
    expect(braking({}, { canRegenerate: false })).toEqual(["none: regen is off", "this motor cannot"]);
  });
});

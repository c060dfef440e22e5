import { describe, expect, it } from "vitest";
import { InputError, type Problem } from "../../../../shared/problems.ts";
import type { MapValues } from "../../../../sim/plan/motorMap/mapCells.ts";
import { lossGiven, lossOfEfficiency, valueScale } from "../../../../sim/plan/motorMap/mapLosses.ts";

const cell = (value: number, speed_rpm = 1000, torque_Nm = 20) => ({ value, speed_rpm, torque_Nm, line: 1 });
const scaled = (values: MapValues, ...entries: readonly number[]) =>
  valueScale("map.csv", { cells: entries.map((value) => cell(value)), values, notes: [] });

describe("what the values of a map are", () => {
  it("is said by its words: losses in watts or kilowatts", () => {
    expect(scaled("W", 100, 200)).toEqual({ isLoss: true, scale: 1, says: "losses read in W" });
    expect(scaled("kW", 0.1, 0.2)).toEqual({ isLoss: true, scale: 1000, says: "losses read in kW" });
  });
  it("is percent where they are larger than shares can be", () => {
    const percent = { isLoss: false, scale: 0.01, says: "efficiencies read in percent" };
    expect(scaled(undefined, 80, 90)).toEqual(percent);
    expect(scaled("efficiency", 80, 90)).toEqual(percent);
    expect(scaled("percent", 80, 1.5)).toEqual(percent);
    expect(scaled("percent", 1.5)).toEqual(percent);
    expect(scaled(undefined, 2.1, 3)).toEqual(percent);
  });
  it("is shares of 1 otherwise, a slip up to 2 among them, and that is said where a word says percent", () => {
    expect(scaled(undefined, 0.8, 0.9)).toEqual({ isLoss: false, scale: 1, says: "efficiencies read as shares of 1" });
    expect(scaled("efficiency", 0.8, 2).scale).toBe(1);
    expect(scaled("percent", 0.8, 1)).toMatchObject({
      scale: 1,
      says: "efficiencies read as shares of 1, though a word says percent",
    });
  });
  it("is watts where more than a quarter are larger than percentages, and no word says what they are", () => {
    expect(scaled(undefined, 151, 40, 50).isLoss).toBe(true);
    expect(scaled(undefined, 150, 40, 50).isLoss).toBe(false);
    expect(scaled(undefined, 151, 40, 50, 60).isLoss).toBe(false);
    expect(scaled("efficiency", 151, 152).isLoss).toBe(false);
  });
  it("is refused where shares and percentages stand among one another, more than a quarter below 1", () => {
    expect(() => scaled(undefined, 0.8, 87, 90)).toThrow(InputError);
    expect(scaled(undefined, 0.8, 87, 90, 91).scale).toBe(0.01);
    expect(scaled(undefined, 0, 1, 87, 90).scale).toBe(0.01);
  });
  it("is asked only of what stands at a speed and a torque", () => {
    const cells = [cell(0.8), cell(5000, 0, 20), cell(5000, 1000, 0), cell(0.9, 1000, -20)];
    expect(valueScale("map.csv", { cells, values: undefined, notes: [] }).scale).toBe(1);
    const braking = [cell(80, 1000, -20), cell(0.5, 0, 20)];
    expect(valueScale("map.csv", { cells: braking, values: undefined, notes: [] }).scale).toBe(0.01);
  });
});

describe("the loss of an efficiency", () => {
  const lossOf = (value: number, speed_rpm = 1000, torque_Nm = 20, scale = 1) => {
    const problems: Problem[] = [];
    const loss_W = lossOfEfficiency("line 1", cell(value, speed_rpm, torque_Nm), scale, problems);
    return { loss_W, messages: problems.map(({ message }) => message) };
  };
  /** 20 Nm at 1000 rpm. */
  const shaft_W = (20 * 1000 * 2 * Math.PI) / 60;

  it("is what driving takes beyond the shaft, and what braking does not bring back of it", () => {
    expect(lossOf(0.8).loss_W).toBeCloseTo(0.25 * shaft_W, 9);
    expect(lossOf(80, 1000, 20, 0.01).loss_W).toBeCloseTo(0.25 * shaft_W, 9);
    expect(lossOf(0.8, 1000, -20).loss_W).toBeCloseTo(0.2 * shaft_W, 9);
    expect(lossOf(0.8, 1000, 0.5).loss_W).toBeCloseTo((0.25 * shaft_W) / 40, 9);
    expect(lossOf(1).loss_W).toBe(0);
  });
  it("is not known of an efficiency of nothing, at no speed or without torque", () => {
    for (const found of [lossOf(0), lossOf(0.8, 0), lossOf(0.8, -5), lossOf(0.8, 1000, 0)])
      expect(found).toEqual({ loss_W: undefined, messages: [] });
  });
  it("is not known of what is none, which is refused", () => {
    expect(lossOf(1.2).messages).toEqual(["found 1.2 at 1000 rpm, 20 Nm, an efficiency is 0 to 1"]);
    expect(lossOf(-3, 1000, 20, 0.01).messages).toEqual(["found -3 at 1000 rpm, 20 Nm, an efficiency is 0 to 100"]);
    expect(lossOf(0.009).messages).toEqual(["found 0.009 at 1000 rpm, 20 Nm, an efficiency is at least 0.01 or empty"]);
    expect(lossOf(0.9, 1000, 20, 0.01).messages).toEqual([
      "found 0.9 at 1000 rpm, 20 Nm, an efficiency is at least 1 or empty",
    ]);
    expect(lossOf(0.01).loss_W).toBeCloseTo(99 * shaft_W, 6);
    expect(lossOf(0.009, 0.5, 20).messages).toHaveLength(1);
  });
  it("is no slip where it says nothing anyway, however small", () => {
    expect(lossOf(0.009, 0).messages).toEqual([]);
    expect(lossOf(0.009, 1000, 0).messages).toEqual([]);
  });
});

describe("a loss that is given", () => {
  const given = (value: number, scale = 1) => {
    const problems: Problem[] = [];
    return [lossGiven("line 1", cell(value), scale, problems), ...problems.map(({ message }) => message)];
  };
  it("is in watts, from none to a megawatt", () => {
    expect(given(250)).toEqual([250]);
    expect(given(0.25, 1000)).toEqual([250]);
    expect(given(0)).toEqual([0]);
    expect(given(1e6)).toEqual([1e6]);
    expect(given(1_000_001)).toEqual([undefined, "found 1000001, a loss is 0 to 1000000"]);
    expect(given(-0.5, 1000)).toEqual([undefined, "found -0.5, a loss is 0 to 1000"]);
  });
});

import { expect, it } from "vitest";
import { gearSpeeds } from "../../../web/charts/gearSpeeds.ts";
import { drawing } from "../../support/drawing.ts";

/** 0.005 m/s a turn a minute: 40 m/s at 8000 rpm. */
const gears = [
  { name: "third", speedPerRpm_mps: 0.005, isUsed: true },
  { name: "first", speedPerRpm_mps: 0.001, isUsed: false },
];
const chart = gearSpeeds({ gears, maxSpeed_rpm: 8000, roadTop_mps: 20 }, drawing());

it("has the speed at which the motor ends in each gear, and at a thousand turns", () => {
  expect(chart.table.rows.map(([name, top, per1000]) => [name, top, per1000])).toEqual([
    ["third", 144, 18],
    ["first", expect.closeTo(28.8, 9), expect.closeTo(3.6, 9)],
  ]);
});

it("reads the motor's speed in each gear, and that a gear ends before", () => {
  const values = chart.read?.(20).values.map(({ label, text }) => `${label}: ${text}`);
  expect(values).toEqual(["third: 4000 rpm", "first: beyond the motor's top speed"]);
});

it("says that no gear is known", () => {
  expect(gearSpeeds({ gears: [], maxSpeed_rpm: 8000, roadTop_mps: 20 }, drawing()).alt).toMatch(/No gear is known/);
});

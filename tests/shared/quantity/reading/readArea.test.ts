import { expect, it } from "vitest";
import { readArea } from "../../../../shared/quantity/reading/readArea.ts";
import { readPlain } from "../../../../shared/quantity/reading/readPlain.ts";
import { refusal, understood, written } from "./written.ts";

const area = (text: string) => readArea(written("area", text), readPlain);

it("is width times height, times the share of it that is filled", () => {
  // 78 x 90 square inches of 645.16 mm².
  expect(understood(area("78 in x 90 in x 0.82")).value).toBeCloseTo(78 * 90 * 645.16e-6 * 0.82, 9);
  expect(understood(area("1.5 m x 1.4 m")).value).toBeCloseTo(2.1, 9);
});

it("gives bare sides the one unit in which they make the front of a car", () => {
  const { value, notes } = understood(area("1500 x 1400"));
  expect(value).toBeCloseTo(2.1, 9);
  expect(notes).toContain("sides read in mm");
});

it("is an area times a number, either way round", () => {
  expect(understood(area("1.75 m2 x 0.42")).value).toBeCloseTo(0.735, 9);
  expect(understood(area("0.42 x 1.75 m2")).value).toBeCloseTo(0.735, 9);
});

it("refuses a share that no car fills", () => {
  expect(refusal(area("78 in x 90 in x 5")).problem.message).toMatch(/the share that the car fills/);
});

import { expect, it } from "vitest";
import { envelopeTorque_Nm, peakEnvelope, pointEnvelope } from "../../../sim/motor/envelope.ts";

const peak = peakEnvelope(100, 120, 36_000); // base speed 300 rad/s at 100 V
const points = pointEnvelope(100, [50, 200, 400], [100, 80, 30]);

it("holds peak torque to base speed and peak power above it", () => {
  expect(envelopeTorque_Nm(peak, 0, 100)).toBe(120);
  expect(envelopeTorque_Nm(peak, 299.9, 100)).toBe(120);
  expect(envelopeTorque_Nm(peak, 600, 100)).toBeCloseTo(60, 9);
});

it("moves base speed and the power above it with the voltage, and keeps peak torque", () => {
  expect(envelopeTorque_Nm(peak, 200, 80)).toBe(120);
  expect(envelopeTorque_Nm(peak, 600, 80)).toBeCloseTo(48, 9);
  expect(envelopeTorque_Nm(peak, 600, 200)).toBe(120);
});

it("by points is straight between them, level before the first, of constant power beyond the last", () => {
  expect(envelopeTorque_Nm(points, 0, 100)).toBe(100);
  expect(envelopeTorque_Nm(points, 125, 100)).toBeCloseTo(90, 9);
  expect(envelopeTorque_Nm(points, 400, 100)).toBeCloseTo(30, 9);
  expect(envelopeTorque_Nm(points, 800, 100)).toBeCloseTo(15, 9);
});

it("by points stretches its speed axis with the voltage", () => {
  expect(envelopeTorque_Nm(points, 150, 50)).toBeCloseTo(envelopeTorque_Nm(points, 300, 100), 9);
});

it("knows the largest torque of its points and the power at the last of them", () => {
  expect(points.peakTorque_Nm).toBe(100);
  expect(points.peakPower_W).toBe(12_000);
});

it("gives no torque at no voltage", () => {
  expect(envelopeTorque_Nm(peak, 0, 0)).toBe(0);
  expect(envelopeTorque_Nm(points, 10, -5)).toBe(0);
  expect(envelopeTorque_Nm(peak, 0, 0.5)).toBe(120);
});

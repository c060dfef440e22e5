import { expect, it } from "vitest";
import {
  type Frame,
  positionAlong,
  positionByRow,
  valueAtPixel,
  within,
  xPixel,
  yPixel,
} from "../../../../../web/charts/parts/figure/frame.ts";

const frame: Frame = { left: 50, right: 250, top: 10, bottom: 110, height: 150, x: [0, 20], y: [-5, 5] };

it("places values between its edges, upwards growing", () => {
  expect([0, 10, 20].map((value) => xPixel(frame, value))).toEqual([50, 150, 250]);
  expect([-5, 0, 5].map((value) => yPixel(frame, value))).toEqual([110, 60, 10]);
});

it("finds the value of a pixel again, also beyond its edges", () => {
  for (const value of [-3, 0, 7, 30]) expect(valueAtPixel(frame, "x", xPixel(frame, value))).toBeCloseTo(value, 9);
  expect(valueAtPixel(frame, "y", yPixel(frame, 4))).toBeCloseTo(4, 9);
});

it("is a position along the scale in the quantity's own unit", () => {
  // Kilometres shown, metres shared.
  const position = positionAlong(frame, "distance_m", 1000);
  expect([position.first, position.last, position.step]).toEqual([0, 20_000, 200]);
  expect(position.toPixel(10_000)).toBe(150);
  expect(position.fromPixel(150, 0)).toBeCloseTo(10_000, 9);
  expect([within(position, -1), within(position, 5), within(position, 30_000)]).toEqual([0, 5, 20_000]);
});

it("is a position from row to row", () => {
  const position = positionByRow("pack", 3, { middle_px: 20, row_px: 40, from_px: 0, to_px: 200 });
  expect([position.first, position.last, position.toPixel(2), position.fromPixel(60, 0)]).toEqual([0, 2, 100, 1]);
});

import { describe, expect, it } from "vitest";
import type { Position } from "../../../../../web/charts/parts/figure/chart.ts";
import {
  atPointer,
  atStep,
  readAt,
  stepNear,
  stepsOf,
} from "../../../../../web/charts/parts/reading/commonPosition.ts";

const road: Position = {
  quantity: "distance_m",
  first: 0,
  last: 8000,
  step: 80,
  isVertical: false,
  from_px: 30,
  to_px: 200,
  toPixel: (at) => 50 + at / 20,
  fromPixel: (pixel) => (pixel - 50) * 20,
};
const packs: Position = {
  ...road,
  quantity: "pack",
  last: 4,
  step: 1,
  isVertical: true,
  fromPixel: (pixel) => pixel / 50,
};

describe("a common position", () => {
  it("is read only in figures of its quantity, and only within them", () => {
    expect(readAt(road, { quantity: "distance_m", at: 4000 })).toBe(4000);
    expect(readAt(road, { quantity: "time_s", at: 4000 })).toBeUndefined();
    expect(readAt(road, { quantity: "distance_m", at: 8001 })).toBeUndefined();
    expect(readAt(road, undefined)).toBeUndefined();
  });

  it("goes from end to end in even steps", () => {
    expect(stepsOf(road)).toBe(100);
    expect([0, 50, 100].map((count) => atStep(road, count))).toEqual([0, 4000, 8000]);
    expect(stepNear(road, 4030)).toBe(50);
  });

  it("has one step where a figure has one place", () => {
    expect(stepsOf({ ...packs, last: 0 })).toBe(1);
    expect(atStep({ ...packs, last: 0 }, 1)).toBe(0);
    expect(stepNear({ ...packs, last: 0 }, 0)).toBe(0);
  });

  it("follows the pointer, kept within the figure, from pack to pack where bars lie", () => {
    expect(atPointer(road, 150, 999)).toBe(2000);
    expect(atPointer(road, -40, 0)).toBe(0);
    expect(atPointer(road, 9999, 0)).toBe(8000);
    expect(atPointer(packs, 3, 112)).toBe(2);
  });
});

import { expect, it } from "vitest";
import { straightAt } from "../../../sim/math/straightAt.ts";

const places = [1, 2, 4];
const values = [10, 20, 0];

it("is straight between points and each point itself, worked by hand", () => {
  for (const [at, value] of [
    [1, 10],
    [1.5, 15],
    [2, 20],
    [2.5, 15],
    [3, 10],
    [4, 0],
  ]) {
    expect(straightAt(places, values, at)).toBe(value);
  }
});

it("is level before the first point and after the last", () => {
  expect(straightAt(places, values, -7)).toBe(10);
  expect(straightAt(places, values, 99)).toBe(0);
});

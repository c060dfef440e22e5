import { expect, it } from "vitest";
import { steepestPitch } from "../../../../sim/plan/hills/steepestPitch.ts";

const road = (distance_m: number[], elevation_m: number[]) => ({
  distance_m: Float64Array.from(distance_m),
  elevation_m: Float64Array.from(elevation_m),
});
const grade = (sine: number) => sine / Math.sqrt(1 - sine * sine);

it("is the mean over 60 m where that is greatest, with one end at a point of the profile", () => {
  // 40 m at 1 in 5 between 1 in 20: the best 60 m hold all of the steep part.
  const pitch = steepestPitch(road([0, 500, 540, 1000], [0, 25, 33, 56]));
  expect(pitch?.grade_ratio).toBeCloseTo(grade((8 + 20 * 0.05) / 60), 12);
  expect(pitch?.from_m).toBeGreaterThanOrEqual(480);
  expect(pitch?.from_m).toBeLessThanOrEqual(500);
});

it("takes no notice of a bump of a few metres", () => {
  expect(steepestPitch(road([0, 100, 103, 106, 300], [0, 0, 1, 0, 0]))?.grade_ratio).toBeCloseTo(grade(1 / 60), 6);
});

it("is of the whole road where that is shorter", () => {
  expect(steepestPitch(road([0, 30], [0, 3]))).toEqual({ grade_ratio: grade(0.1), from_m: 0, length_m: 30 });
});

it("is none on a road that only falls, or is level", () => {
  expect(steepestPitch(road([0, 500], [40, 0]))).toBeUndefined();
  expect(steepestPitch(road([0, 500], [7, 7]))).toBeUndefined();
});

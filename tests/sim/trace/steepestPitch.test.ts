import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { steepestPitch } from "../../../sim/trace/steepestPitch.ts";

const profile = (...points: readonly (readonly [number, number])[]) => ({
  distance_m: Float64Array.from(points, ([distance_m]) => distance_m),
  elevation_m: Float64Array.from(points, ([, elevation_m]) => elevation_m),
});

const gradeOf = (sine: number) => sine / Math.sqrt(1 - sine * sine);

describe("the steepest pitch of a road", () => {
  it("is the piece itself where a steep piece is longer than a car and its trailer", () => {
    const found = steepestPitch(profile([0, 0], [500, 10], [800, 40], [1200, 30]));
    expect(found?.grade_ratio).toBeCloseTo(gradeOf(0.1), 12);
    expect(found?.from_m).toBeGreaterThanOrEqual(500);
    expect(found?.to_m).toBeLessThanOrEqual(800);
  });

  it("counts a kerb of 10 m over the 60 m around it", () => {
    expect(steepestPitch(profile([0, 0], [500, 0], [510, 3], [1000, 3]))?.grade_ratio).toBeCloseTo(gradeOf(3 / 60), 12);
  });

  it("is that of the whole road where the road is shorter than 60 m", () => {
    expect(steepestPitch(profile([0, 0], [20, 4]))).toEqual({ from_m: 0, to_m: 20, grade_ratio: gradeOf(0.2) });
  });

  it("is the mean over 60 m where that is greatest, with one end at a point of the profile", () => {
    // 40 m at 1 in 5 between 1 in 20: the best 60 m hold all of the steep part.
    const found = steepestPitch(profile([0, 0], [500, 25], [540, 33], [1000, 56]));
    expect(found?.grade_ratio).toBeCloseTo(gradeOf((8 + 20 * 0.05) / 60), 12);
    expect(found?.from_m).toBeGreaterThanOrEqual(480);
    expect(found?.from_m).toBeLessThanOrEqual(500);
  });

  it("is none on a road that only falls, or is level", () => {
    expect(steepestPitch(profile([0, 50], [700, 10]))).toBeUndefined();
    expect(steepestPitch(profile([0, 5], [700, 5]))).toBeUndefined();
  });

  it("is no less steep than any piece of 60 m that begins anywhere, tried metre by metre", () => {
    const legs = fc.array(fc.tuple(fc.integer({ min: 5, max: 150 }), fc.integer({ min: -4, max: 4 })), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(legs, (each) => {
        const points: [number, number][] = [[0, 0]];
        for (const [length_m, rise_m] of each) {
          const [distance_m, elevation_m] = points.at(-1) ?? [0, 0];
          points.push([distance_m + length_m, elevation_m + rise_m]);
        }
        const { distance_m, elevation_m } = profile(...points);
        const heightAt = (at_m: number) => {
          const k = Math.max(0, distance_m.findIndex((end_m) => end_m >= at_m) - 1);
          return (
            elevation_m[k] +
            ((at_m - distance_m[k]) / (distance_m[k + 1] - distance_m[k])) * (elevation_m[k + 1] - elevation_m[k])
          );
        };
        const last_m = distance_m[distance_m.length - 1];
        const found = steepestPitch({ distance_m, elevation_m })?.grade_ratio ?? 0;
        for (let from_m = 0; from_m + 60 <= last_m; from_m++) {
          expect(gradeOf((heightAt(from_m + 60) - heightAt(from_m)) / 60)).toBeLessThanOrEqual(found + 1e-9);
        }
      }),
    );
  });
});

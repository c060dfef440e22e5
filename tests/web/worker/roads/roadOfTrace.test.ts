import fc from "fast-check";
import { expect, it } from "vitest";
import { Road } from "../../../../shared/job/schema/road.ts";
import { hillsOf, roadOfTrace } from "../../../../web/worker/roads/roadOfTrace.ts";

/** Height of a profile in the job's own units at a distance, straight between its points. */
function heightAt(hills: NonNullable<ReturnType<typeof hillsOf>>, place_km: number): number {
  const i = Math.max(
    1,
    hills.distance_km.findIndex((each_km) => each_km >= place_km),
  );
  const [from_km, to_km] = [hills.distance_km[i - 1], hills.distance_km[i]];
  const share = (place_km - from_km) / (to_km - from_km);
  return hills.elevation_m[i - 1] * (1 - share) + hills.elevation_m[i] * share;
}

it("thins hills to within a quarter of a metre, ends included, in a form that a job takes", () => {
  const slopes = fc.array(fc.double({ min: -0.25, max: 0.25, noNaN: true }), { minLength: 3, maxLength: 200 });
  fc.assert(
    fc.property(slopes, (grades) => {
      const distance_m = Float64Array.from({ length: grades.length + 1 }, (_, i) => 10 * i);
      const elevation_m = new Float64Array(grades.length + 1);
      grades.forEach((grade, i) => {
        elevation_m[i + 1] = elevation_m[i] + 10 * grade;
      });
      const hills = hillsOf({ distance_m, elevation_m });
      if (!hills) throw new Error("expected hills");
      expect(hills.distance_km[0]).toBe(0);
      expect(hills.distance_km.at(-1)).toBeCloseTo(distance_m[grades.length] / 1000, 6);
      // 0.1 m by thinning, 0.05 m by rounding the height, and what 0.5 m of road makes of a slope of 1 in 4.
      for (let i = 0; i <= grades.length; i++) {
        expect(Math.abs(heightAt(hills, distance_m[i] / 1000) - elevation_m[i])).toBeLessThan(0.28);
      }
      const road = { kind: "trace", id: "log-1", title: "A", time_s: [0, 1], speed_kmh: [0, 0], hills };
      expect(Road.safeParse(road).success).toBe(true);
    }),
  );
});

it("draws a level road with two points, and a point just before the end gives way to the end", () => {
  const level = hillsOf({
    distance_m: Float64Array.from([0, 10, 20, 30]),
    elevation_m: Float64Array.from([5, 5, 5, 5]),
  });
  expect(level).toEqual({ distance_km: [0, 0.03], elevation_m: [5, 5] });
  const close = hillsOf({ distance_m: Float64Array.from([0, 100, 101]), elevation_m: Float64Array.from([0, 20, 19]) });
  expect(close).toEqual({ distance_km: [0, 0.101], elevation_m: [0, 19] });
});

it("keeps times, speeds and distance of a trace", () => {
  const time_s = Float64Array.from([0, 1.23456, 10, 20]);
  const speed_mps = Float64Array.from([0, 5, 12.3456, 0]);
  const made = roadOfTrace({ id: "t", title: "t", time_s, speed_mps }, "Mine");
  expect(made.road).toEqual({
    kind: "trace",
    title: "Mine",
    time_s: [0, 1.235, 10, 20],
    speed_kmh: [0, 18, 44.444, 0],
  });
  expect(made.duration_s).toBe(20);
  expect(made.distance_m).toBeCloseTo(2.5 * 1.23456 + 8.6728 * 8.76544 + 61.728, 6);
});

it("keeps how far a log leaves the road open, within what a job takes", () => {
  const trace = { id: "log", title: "A", time_s: Float64Array.of(0, 1), speed_mps: Float64Array.of(0, 0) };
  const spread = {
    energy_ratio: { low: 0.87654, high: 31 },
    distance_ratio: { low: 0.991, high: 1.012 },
    climb_m: { low: 101.4, high: 119.6 },
  };
  const { road } = roadOfTrace({ ...trace, spread }, "A");
  expect(road).toMatchObject({
    spread: {
      energy_ratio: { low: 0.877, high: 10 },
      distance_ratio: { low: 0.991, high: 1.012 },
      climb_m: { low: 101, high: 120 },
    },
  });
  expect(Road.safeParse({ ...road, id: "log-1" }).success).toBe(true);
  expect(roadOfTrace(trace, "A").road).not.toHaveProperty("spread");
});

import { expect, it } from "vitest";
import { drivePartsOf } from "../../../../sim/route/trips/drivePartsOf.ts";

/** 100 s at 10 m/s that begin at 1000 s, broken before its 60th and 65th second. */
function parts(elevation_m: number) {
  const column = (value: number) => new Float64Array(100).fill(value);
  const series = {
    count: 100,
    time_s: Float64Array.from({ length: 100 }, (_, i) => 1000 + i),
    speed_mps: column(10),
    distance_m: Float64Array.from({ length: 100 }, (_, i) => 10 * i),
    elevation_m: column(Number.NaN),
    middleElevation_m: column(elevation_m),
    flags: new Uint8Array(100),
    breaks: [60, 65],
  };
  return drivePartsOf({ series });
}

it("are what lies between breaks, each with the moment it begins, pieces of half a minute left out", () => {
  const found = parts(120).parts;
  expect(found.map(({ start_s }) => start_s)).toEqual([1000, 1065]);
  expect(found.map(({ trace }) => trace.speed_mps.every((speed_mps) => speed_mps === 10))).toEqual([true, true]);
});

it("have heights where the log has, the middle of those that fit", () => {
  expect(parts(120)).toMatchObject({ hasHeights: true });
  expect(parts(120).parts[0].trace.profile?.elevation_m[0]).toBeCloseTo(120, 9);
  expect(parts(Number.NaN).hasHeights).toBe(false);
});

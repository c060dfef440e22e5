import { describe, expect, it } from "vitest";
import { circuitySeen_frac } from "../../../../../sim/route/clean/motion/circuitySeen.ts";
import type { RowColumns } from "../../../../../sim/route/clean/rows/rowColumns.ts";

/** Fixes 10 s apart at places in metres about 0, 0, where a degree of the equator is 111.32 km and one of the meridian 110.57 km. */
function seen(places: readonly (readonly [number, number])[], time_s = places.map((_, i) => 10 * i)): number {
  const rows = {
    count: places.length,
    time_s: Float64Array.from(time_s),
    latitude_deg: Float64Array.from(places, ([, north_m]) => north_m / 110_574),
    longitude_deg: Float64Array.from(places, ([east_m]) => east_m / 111_320),
  };
  const segments = [{ from: 0, to: places.length, bridges: [] }];
  return circuitySeen_frac(rows as unknown as RowColumns, { segments, gaps: [], interval_s: 10 });
}

describe("how much a road is seen to wind", () => {
  it("is nothing along a straight line", () => {
    expect(seen([0, 1, 2, 3, 4].map((i) => [80 * i, 60 * i]))).toBeCloseTo(0, 6);
  });

  it("is on a circle by how much two chords are longer than one of twice the angle: 1 - cos(angle / 2)", () => {
    const angle_rad = 0.5;
    const circle = Array.from({ length: 20 }, (_, i) => [
      200 * Math.cos(angle_rad * i),
      200 * Math.sin(angle_rad * i),
    ]) as [number, number][];
    // Degrees in metres to half a percent.
    expect(Math.abs(seen(circle) / (1 - Math.cos(angle_rad / 2)) - 1)).toBeLessThan(0.02);
  });

  it("does not count where the car hardly moves, nor across gaps", () => {
    const corner = [
      [0, 0],
      [100, 0],
      [100, 100],
    ] as const;
    expect(seen(corner)).toBeCloseTo(1 - Math.SQRT1_2, 2);
    expect(seen(corner, [0, 10, 60])).toBe(0);
    expect(seen(corner.map(([east_m, north_m]) => [0.1 * east_m, 0.1 * north_m]))).toBe(0);
  });
});

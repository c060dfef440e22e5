import { expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { readLog } from "../../../../sim/route/readLog.ts";
import { routeShape } from "../../../../sim/route/roads/routeShape.ts";

const route = (points: readonly (readonly [number, number])[]) =>
  readLog(
    "plan.gpx",
    new TextEncoder().encode(
      `<gpx><rte>${points.map(([lat, ele]) => `<rtept lat="${lat}" lon="8"><ele>${ele}</ele></rtept>`).join("")}</rte></gpx>`,
    ),
  );

it("of a planned route is its length on the ellipsoid and its hills", () => {
  // One degree of latitude from 50 north in a thousand pieces, rising steadily by 500 m.
  const shape = routeShape(route(Array.from({ length: 1001 }, (_, i) => [50 + i / 1000, 100 + i / 2] as const)));
  expect(shape.distance_m).toBeCloseTo(111_238.681, 2);
  const { elevation_m, distance_m } = shape.profile ?? {
    elevation_m: new Float64Array(1),
    distance_m: new Float64Array(1),
  };
  expect(distance_m[1000]).toBeCloseTo(111_238.681, 2);
  expect(elevation_m[1000] - elevation_m[0]).toBeGreaterThan(490);
  expect(elevation_m[1000] - elevation_m[0]).toBeLessThan(510);
  // It only rises: the climb is the height between its ends, but for rounding.
  expect(shape.climb_m).toBeCloseTo(elevation_m[1000] - elevation_m[0], 6);
});

it("of a route that goes nowhere is refused", () => {
  expect(() =>
    routeShape(
      route([
        [50, 1],
        [50, 1],
      ]),
    ),
  ).toThrow(InputError);
});

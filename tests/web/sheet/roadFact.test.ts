import { expect, it } from "vitest";
import { roadFact } from "../../../web/sheet/roadFact.ts";

const road = (climb_m: number) => ({ distance_km: 12.3, climb_m }) as Parameters<typeof roadFact>[1];

it("has the road's length, and what it climbs where it climbs", () => {
  expect(roadFact("Town", road(0), undefined, "metric")).toBe("Town, 12 km, level");
  expect(roadFact("Hill", road(140), undefined, "metric")).toBe("Hill, 12 km, climbing 140 m");
});

it("has its steepest piece as a road sign has it", () => {
  // A tenth all along.
  const profile = { distance_m: Float64Array.of(0, 1000), elevation_m: Float64Array.of(0, 100) };
  expect(roadFact("Hill", road(100), profile, "metric")).toMatch(/, steepest 1 in 10$/);
});

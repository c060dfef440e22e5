import { expect, it } from "vitest";
import { openRoutes } from "../../../../sim/index.ts";
import { cycleRoad } from "../../../../web/worker/roads/cycleRoad.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";

const routes = await openRoutes();
const cycle = "wltc-class-3b";

it("keeps a cycle driven once as a cycle, of its own length", () => {
  const made = cycleRoad(routes, { cycle, title: "Once" }, cycleTexts);
  expect(made.road).toEqual({ kind: "cycle", title: "Once", cycle });
  // The standard's own distance and duration.
  expect(made.distance_m).toBeCloseTo(23_266, -2);
  expect(made.duration_s).toBe(1800);
});

it("makes a trace of a cycle that is repeated, exactly as long as wanted", () => {
  const made = cycleRoad(routes, { cycle, title: "Twice", distance_km: 40 }, cycleTexts);
  expect(made.road.kind).toBe("trace");
  expect(made.distance_m).toBeCloseTo(40_000, 6);
  expect(made.duration_s).toBeGreaterThan(1800);
  expect(made.duration_s).toBeLessThan(3600);
});

it("lays hills under it in the job's own units", () => {
  const hills = { distance_km: [0, 10, 23.27], elevation_m: [0, 100, 0] };
  const { road } = cycleRoad(routes, { cycle, title: "Hilly", hills }, cycleTexts);
  expect(road).toMatchObject({ kind: "cycle", cycle });
  expect(Math.max(...(road.hills?.elevation_m ?? []))).toBeCloseTo(100, 0);
  const top = road.hills?.elevation_m.indexOf(Math.max(...road.hills.elevation_m)) ?? -1;
  expect(road.hills?.distance_km[top]).toBeCloseTo(10, 1);
});

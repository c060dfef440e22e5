import { expect, it } from "vitest";
import { roadAxis } from "../../../../../web/charts/parts/axes/roadAxis.ts";

it("counts time in what suits the length of the run", () => {
  const label = (last_s: number) => roadAxis("time", last_s).label;
  expect([300, 301, 10_800, 10_801].map(label)).toEqual(["Time (s)", "Time (min)", "Time (min)", "Time (h)"]);
  expect(roadAxis("time", 600).shown(90)).toBe(1.5);
  expect(roadAxis("time", 100, undefined, "Time of the log").label).toBe("Time of the log (s)");
});

it("counts the way in the unit of distance", () => {
  const axis = roadAxis("distance", 5000);
  expect([axis.label, axis.name, axis.format(1500), axis.perShown]).toEqual([
    "Distance (km)",
    "distance_km",
    "1.5 km",
    1000,
  ]);
});

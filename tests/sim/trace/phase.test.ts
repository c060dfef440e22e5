import { expect, it } from "vitest";
import { characteristics } from "../../../sim/trace/characteristics.ts";
import { phase } from "../../../sim/trace/phase.ts";
import { readTraceCsv } from "../../../sim/trace/readTraceCsv.ts";

const rows = ["0,0,100", "2,4,102", "4,4,106", "6,0,103", "8,0,103"];
const road = readTraceCsv("road.csv", ["time_s,speed_mps,elevation_m", ...rows].join("\n"));

it("counts time and distance from 0 again and keeps heights", () => {
  const part = phase(road, 2, 6);
  expect([...part.time_s]).toEqual([0, 2, 4]);
  expect([...part.speed_mps]).toEqual([4, 4, 0]);
  expect([...(part.profile?.distance_m ?? [])]).toEqual([0, 8, 12]);
  expect([...(part.profile?.elevation_m ?? [])]).toEqual([102, 106, 103]);
});

it("cuts between two samples on the straight line, in speed and in height", () => {
  const part = phase(road, 1, 5);
  expect([...part.time_s]).toEqual([0, 1, 3, 4]);
  expect([...part.speed_mps]).toEqual([2, 4, 4, 2]);
  // 1 m of the first 4 m is behind; 3 m of the last 4 m are driven.
  expect([...(part.profile?.distance_m ?? [])]).toEqual([0, 3, 11, 14]);
  expect([...(part.profile?.elevation_m ?? [])]).toEqual([100.5, 102, 106, 103.75]);
});

it("makes parts whose distances add up to the whole", () => {
  const distances = [phase(road, 0, 1.3), phase(road, 1.3, 4.7), phase(road, 4.7, 8)];
  const sum_m = distances.reduce((sum, part) => sum + characteristics(part).distance_m, 0);
  expect(sum_m).toBeCloseTo(characteristics(road).distance_m, 12);
});

it("gives the trace itself from its start to its end", () => {
  expect(phase(road, 0, 8)).toEqual(road);
});

it.each([
  [-1, 2],
  [2, 2],
  [3, 2],
  [0, 9],
])("refuses a phase from %s s to %s s", (from_s, to_s) => {
  expect(() => phase(road, from_s, to_s)).toThrow("has no phase");
});

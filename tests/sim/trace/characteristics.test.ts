import { expect, it } from "vitest";
import { characteristics } from "../../../sim/trace/characteristics.ts";
import { readTraceCsv } from "../../../sim/trace/readTraceCsv.ts";
import { resample } from "../../../sim/trace/resample.ts";

const header = "time_s,speed_mps";
const read = (rows: readonly string[], columns = header) => readTraceCsv("a.csv", [columns, ...rows].join("\n"));

// 0 to 10 m/s in 5 s, 10 s held, to rest in 4 s, 6 s stood: 25 m + 100 m + 20 m.
const there = read(["0,0", "5,10", "15,10", "19,0", "25,0"]);

it("integrates straight lines exactly", () => {
  const found = characteristics(there);
  expect(found.distance_m).toBe(145);
  expect(found.duration_s).toBe(25);
  expect(found.mean_mps).toBe(5.8);
  expect(found.moving_mps).toBeCloseTo(145 / 19, 12);
  expect(found.max_mps).toBe(10);
  expect(found.stop_s).toBe(6);
});

it("takes acceleration and deceleration from the steps, both as positive numbers", () => {
  const found = characteristics(there);
  expect(found.maxAcceleration_mps2).toBe(2);
  expect(found.maxDeceleration_mps2).toBe(2.5);
});

it("has half the risen square of the speed over the distance as relative positive acceleration", () => {
  expect(characteristics(there).relativePositiveAcceleration_mps2).toBeCloseTo(50 / 145, 12);
});

it("does not hang on how finely straight lines are sampled", () => {
  const coarse = characteristics(there);
  const fine = characteristics(resample(there, 0.1));
  expect(fine.distance_m).toBeCloseTo(coarse.distance_m, 9);
  expect(fine.stop_s).toBeCloseTo(coarse.stop_s, 9);
  expect(fine.relativePositiveAcceleration_mps2).toBeCloseTo(coarse.relativePositiveAcceleration_mps2, 9);
});

it.each([
  ["none where the car only comes to rest at the end", ["0,0", "1,0", "2,5", "3,0", "4,0"], 0],
  ["one where it rests at a single sample", ["0,0", "1,5", "2,0", "3,5", "4,0"], 1],
  ["one where it rests for long", ["0,5", "1,0", "2,0", "3,0", "4,5"], 1],
  ["none where it only waits at the start", ["0,0", "1,0", "2,5", "3,5"], 0],
  ["two for two", ["0,5", "1,0", "2,5", "3,0", "4,0", "5,5", "6,0"], 2],
] as const)("counts stops: %s", (_, rows, stops) => {
  expect(characteristics(read(rows)).stops).toBe(stops);
});

it("adds up what the road climbs and falls where heights are known, and says nothing else", () => {
  const hilly = read(["0,10,5", "1,10,9", "2,10,8", "3,10,11"], "time_s,speed_mps,elevation_m");
  expect(characteristics(hilly)).toMatchObject({ climb_m: 7, descent_m: 1 });
  expect(characteristics(there)).not.toHaveProperty("climb_m");
});

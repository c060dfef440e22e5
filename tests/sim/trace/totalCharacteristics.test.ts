import { expect, it } from "vitest";
import { characteristics } from "../../../sim/trace/characteristics.ts";
import { readTraceCsv } from "../../../sim/trace/readTraceCsv.ts";
import { totalCharacteristics } from "../../../sim/trace/totalCharacteristics.ts";

const there = "time_s,speed_mps\n0,0\n5,10\n15,10\n19,0\n25,0"; // 145 m, 6 s stood
const back = "time_s,speed_mps\n0,0\n2,8\n6,0"; // 24 m
const found = [there, back].map((text) => characteristics(readTraceCsv("a.csv", text)));

it("adds up times, distances and stops, and keeps the extremes", () => {
  expect(totalCharacteristics(found)).toMatchObject({
    distance_m: 169,
    duration_s: 31,
    mean_mps: 169 / 31,
    moving_mps: 169 / 25,
    max_mps: 10,
    stop_s: 6,
    stops: 0,
    maxAcceleration_mps2: 4,
    maxDeceleration_mps2: 2.5,
  });
});

it("is, in acceleration, that of both driven in one", () => {
  const inOne = `${there}\n27,8\n31,0`;
  expect(totalCharacteristics(found).relativePositiveAcceleration_mps2).toBeCloseTo(
    characteristics(readTraceCsv("a.csv", inOne)).relativePositiveAcceleration_mps2,
    12,
  );
});

it("is the trace's own for a single one", () => {
  expect(totalCharacteristics(found.slice(0, 1))).toEqual(found[0]);
});

it("knows climbs only where every trace has heights", () => {
  const hill = characteristics(readTraceCsv("a.csv", "time_s,speed_mps,elevation_m\n0,10,5\n1,10,9\n2,10,8"));
  expect(totalCharacteristics([hill, hill])).toMatchObject({ climb_m: 8, descent_m: 2 });
  expect(totalCharacteristics([hill, ...found])).not.toHaveProperty("climb_m");
});

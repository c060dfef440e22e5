import { expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { readHills } from "../../../../web/forms/road/readHills.ts";

it.each([
  ["0 km 120 m; 2.5 km 180 m", [0, 2.5], [120, 180]],
  ["0 120\n2,5 180\n4 95", [0, 2.5, 4], [120, 180, 95]],
  ["0 km: 120 m; 2500 m: 180 m", [0, 2.5], [120, 180]],
  ["0 miles 100 ft; 1 mile 200 ft", [0, 1.609344], [30.48, 60.96]],
  ["0 km -2 m; 3 km 4 m;", [0, 3], [-2, 4]],
])("reads %s", (text, distance_km, elevation_m) => {
  const hills = readHills(text);
  hills.distance_km.forEach((each, i) => {
    expect(each).toBeCloseTo(distance_km[i], 9);
  });
  hills.elevation_m.forEach((each, i) => {
    expect(each).toBeCloseTo(elevation_m[i], 9);
  });
  expect(hills.distance_km).toHaveLength(distance_km.length);
});

it.each([
  ["", /found 0 heights/],
  ["0 km 120 m", /found 1 heights/],
  ["0 km 120 m; up the hill", /height 2: found "up the hill"/],
  ["0 km 120 m; 3 km 150 m; 2 km 100 m", /height 3: found 2 km after 3 km/],
  ["1 km 120 m; 3 km 150 m", /the first distance must be 0 km/],
])("refuses %j and says why", (text, sentence) => {
  expect(() => readHills(text)).toThrow(InputError);
  expect(() => readHills(text)).toThrow(sentence);
});

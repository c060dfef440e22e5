import { expect, it } from "vitest";
import { Weights, weighedFault } from "../../../../shared/job/schema/weights.ts";

const written = {
  wheelbase_mm: 2400,
  weighed: { front_kg: 500, rear_kg: 450 },
  out: [{ name: "engine", mass_kg: 150, place_mm: 0 }],
  boxes: [{ name: "boot box", place_mm: 2600, share_frac: 1 }],
};
const messages = (changes: object) =>
  Weights.safeParse({ ...written, ...changes }).error?.issues.map(({ message }) => message) ?? [];

it("takes what hangs together", () => {
  expect(messages({})).toEqual([]);
});

it("refuses to take more off an axle than it carried", () => {
  // 600 kg over the front axle, which carried 500.
  expect(messages({ out: [{ name: "engine", mass_kg: 600, place_mm: 0 }] })).toEqual([
    "found parts that take 600 kg off the front axle, less than the 500 kg it carried wanted",
  ]);
});

it("has a trailer's ball behind the rear axle", () => {
  expect(messages({ ball: { mass_kg: 60, place_mm: 2400 } })[0]).toMatch(
    /^found 2400 mm, behind the rear axle wanted: above 2400 to \d+ mm$/,
  );
});

it("holds the axles to the mass of the car, within 2 %", () => {
  const weights = Weights.parse(written);
  // 950 kg as weighed.
  expect(weighedFault(weights, 969)).toBeUndefined();
  expect(weighedFault(weights, 970)).toBe(
    "found 500 + 450 = 950 kg on the axles of a car of 970 kg, within 2 % wanted",
  );
});

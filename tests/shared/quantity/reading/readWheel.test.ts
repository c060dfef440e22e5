import { expect, it } from "vitest";
import { readWheel } from "../../../../shared/quantity/reading/readWheel.ts";
import { refusal, understood, written } from "./written.ts";

const radius_mm = (text: string) => understood(readWheel(written("wheelRadius", text))).value;

it.each([
  ["radius 282 mm", 282],
  ["282 mm", 282],
  ["1.85 m round", 1850 / (2 * Math.PI)],
  ["1850 mm", 1850 / (2 * Math.PI)],
  ["loaded diameter 580 mm", 290],
  ["free diameter 600 mm", 0.97 * 300],
  // A mile of 1609.344 m.
  ["870 revs per mile", 1_609_344 / 870 / (2 * Math.PI)],
])("%s is a loaded radius of %f mm", (text, value) => {
  expect(radius_mm(text)).toBeCloseTo(value, 6);
});

it("is a turn in a field of turns", () => {
  const { value } = understood(readWheel(written("circumference", "radius 282 mm")));
  expect(value).toBeCloseTo(2 * Math.PI * 282, 6);
});

it("asks of a length between a radius and a turn what it is", () => {
  expect(refusal(readWheel(written("wheelRadius", "600 mm"))).question?.id).toBe("tyre");
});

it("knows a marking whose point was lost", () => {
  expect(refusal(readWheel(written("wheelRadius", "520-13"))).likely).toBe("5.20-13");
});

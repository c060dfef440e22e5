import { expect, it } from "vitest";
import { readRatio } from "../../../../shared/quantity/reading/readRatio.ts";
import { refusal, understood, written } from "./written.ts";

const axle = (text: string) => understood(readRatio(written("finalDrive", text)));

it.each([
  ["3.42", 3.42],
  ["3.42:1", 3.42],
  ["41/9", 41 / 9],
  ["9/41", 41 / 9],
  ["10 and 43 teeth", 4.3],
  ["4,111", 4.111],
])("an axle of %s gears down by %f", (text, value) => {
  expect(axle(text).value).toBeCloseTo(value, 12);
});

it("says where it turned a crown wheel and pinion over", () => {
  expect(axle("9/41").notes.join()).toMatch(/turned over, 41\/9: a final drive is above 1/);
});

it("takes a gear below 1 as an overdrive, and asks where teeth may drive either way", () => {
  expect(understood(readRatio(written("gearRatio", "0.82"))).value).toBe(0.82);
  expect(understood(readRatio(written("gearRatio", "20 and 25 teeth"))).question?.id).toBe("teeth");
});

it("refuses a wheel without teeth, and units", () => {
  expect(refusal(readRatio(written("gearRatio", "9/0"))).problem.message).toMatch(/must be above 0/);
  expect(refusal(readRatio(written("gearRatio", "3 kg"))).problem.message).toContain("kg");
});

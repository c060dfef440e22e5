import { expect, it } from "vitest";
import { quarterHours } from "../../../shared/quantity/quarterHours.ts";
import { expectWrittenOnce } from "../../support/writtenOnce.ts";

it.each([
  [0, "¼ h"],
  [0.1, "¼ h"],
  [0.75, "¾ h"],
  [1, "1 h"],
  [2.51, "2¾ h"],
  [9.66, "9¾ h"],
  [10.1, "10½ h"],
  [13.6, "14 h"],
])("%f h are written %s", (time_h, words) => {
  expect(quarterHours(time_h)).toBe(words);
});

it("no wait is written in two ways where it is rounded more roughly", () => {
  const part: Readonly<Record<string, string>> = { "¼": ".25", "½": ".5", "¾": ".75" };
  expectWrittenOnce(
    (time_h) => quarterHours(time_h).replace(/[¼½¾]/, (each) => part[each] ?? ""),
    [0.25, 1, 10, 10.5],
    { h: 1 },
  );
});

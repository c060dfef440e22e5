import { expect, it } from "vitest";
import { inTimes, oneIn } from "../../../../web/chapters/parts/inWords.ts";

it.each([
  [0.5, "less than one round of it"],
  [1.02, "one round of it"],
  [1.2, "about one round of it"],
  [3, "three rounds of it"],
  [3.3, "about three rounds of it"],
  [12, "12 rounds of it"],
])("%f rounds are %s", (rounds, words) => {
  expect(inTimes(rounds)).toBe(words);
});

it.each([
  [1 / 9.2, "1 in 9"],
  [1 / 5, "1 in 5"],
  [1 / 4.4, "1 in 4½"],
  [1 / 4.1, "1 in 4"],
])("a slope of %f is %s", (grade_ratio, words) => {
  expect(oneIn(grade_ratio)).toBe(words);
});

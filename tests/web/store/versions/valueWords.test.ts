import { expect, it } from "vitest";
import { valueWords } from "../../../../web/store/versions/valueWords.ts";

it.each([
  [undefined, "nothing"],
  ["", "empty"],
  [true, "yes"],
  [12.5, "12.5"],
  ["x".repeat(80), `${"x".repeat(59)}…`],
  [[0, 0.5, 1], "0, 0.5, 1"],
  [[], "0 entries"],
  [Array.from({ length: 1800 }, (_, i) => i), "1800 entries"],
  [{ name: "Small", seriesModules: 8 }, "Small"],
  [{ kind: "fixed", gear: "3" }, "2 values"],
])("says %j as %s", (value, words) => {
  expect(valueWords(value)).toBe(words);
});

import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { leftBetween, leftCell, leftPhrase } from "../../../../sim/plan/answer/leftWords.ts";

const band = (low: number, high: number) => ({ value: (low + high) / 2, low, high });

it.each([
  [26.4, 38.9, "26 to 38"],
  [-1.2, 5.9, "2 short to 5"],
  [-12.5, -8.5, "9 to 13 short"],
  [-0.01, 0.4, "1 short to 0"],
  [31.2, 31.9, "31"],
  [-3.4, -3.2, "4 short"],
  [7, 7, "7"],
])("writes %f to %f km as %s", (low, high, words) => {
  expect(leftCell(band(low, high), "metric")).toBe(words);
});

it("writes miles where the reader is used to them", () => {
  // 16.09 km are 10 miles and a little less; 32.2 km a little more than 20.
  expect(leftCell(band(16.0, 32.2), "british")).toBe("9 to 20");
  expect(messageIn(leftPhrase(32.2), "british")).toBe("about 20 miles left");
  expect(messageIn(leftPhrase(2.5), "british")).toBe("about 1 mile left");
});

it("says short, never a number below nought, however little is missing", () => {
  expect(messageIn(leftPhrase(-1.2), "metric")).toBe("about 2 km short");
  expect(messageIn(leftPhrase(-1e-3), "metric")).toBe("about 1 km short");
  expect(messageIn(leftBetween(band(-1.2, 5)), "metric")).toBe("between 2 km short and 5 km left");
});

it("says at least where the range was not driven to its end", () => {
  expect(leftCell(band(200, 200), "metric", true)).toBe("at least 200");
  expect(messageIn(leftPhrase(200, true), "metric")).toBe("at least 200 km left");
});

import { expect, it } from "vitest";
import { message, messageIn } from "../../../../shared/quantity/message.ts";
import { listed, note, roadLength, warning } from "../../../../sim/plan/findings/finding.ts";

it("weighs what a person may want to know and what a person must", () => {
  const sentence = message`It is so.`;
  expect(note("kind", sentence)).toEqual({ kind: "kind", weight: "note", sentence });
  expect(warning("kind", sentence)).toEqual({ kind: "kind", weight: "warning", sentence });
});

it("says less than a kilometre in what a tape measures", () => {
  expect(messageIn([roadLength(0.35)], "metric")).toBe("350 m");
  expect(messageIn([roadLength(1)], "metric")).toBe("1 km");
});

it("puts commas between parts", () => {
  expect(messageIn(listed([message`a`, message`b`, message`c`]), "metric")).toBe("a, b, c");
  expect(listed([])).toEqual([]);
});

import { expect, it } from "vitest";
import { readClock } from "../../../../shared/quantity/reading/readClock.ts";
import { refusal, understood, written } from "./written.ts";

it("has hours and minutes in a field of hours, and hours, minutes and seconds in one of seconds", () => {
  expect(understood(readClock(written("hours", "7:30"))).value).toBe(7.5);
  expect(understood(readClock(written("duration", "1:02:03"))).value).toBe(3723);
  expect(readClock(written("hours", "7.5"))).toBeUndefined();
});

it("asks which two a pair is in a field of seconds", () => {
  const { problem, question } = refusal(readClock(written("duration", "7:30")));
  expect(problem.code).toBe("quantity-ambiguous");
  expect(question?.choices.map(({ text }) => text)).toEqual(["7 min 30 s", "7 h 30 min"]);
});

it("refuses a sixty-first minute", () => {
  expect(refusal(readClock(written("hours", "7:61"))).problem.message).toMatch(/behind a colon are below 60/);
});

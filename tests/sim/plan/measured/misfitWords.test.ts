import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { misfitWords } from "../../../../sim/plan/measured/misfitWords.ts";

const words = (misfit_ratio: number, measured: number, predicted = 10) =>
  misfitWords({ misfit_ratio }, measured, predicted).map((each) => messageIn(each, "metric"));

it("says nothing of a log that fits", () => {
  expect(words(1, 10)).toEqual([]);
  expect([words(3, 10), words(1, 19.9), words(1, 5.1)]).toEqual([[], [], []]);
});

it("asks whether the log is of this car where it drew more than twice or less than half", () => {
  expect(words(1, 20.4)).toEqual([
    "This log hardly fits the job: 200 % of the predicted energy. Is it of this car, with this load and in this gear, and are the amps those of the whole pack?",
  ]);
  expect(words(9, 4.9)[0]).toMatch(/^This log hardly fits the job: 49 % of/);
});

it("says that something else differs where more than three times is left of what clocks and noise explain", () => {
  expect(words(3.26, 10)).toEqual([
    "What is left of the differences is 3.3 times what clocks, heights and noise explain: something differs that is not among the values looked at, such as another gear. The bands are wider for it.",
  ]);
});

it("puts it down to the clock where several rows share a time", () => {
  const [found = []] = misfitWords({ misfit_ratio: 4.6 }, 10, 10, true);
  expect(messageIn(found, "metric")).toMatch(
    /^What is left of the differences is 4\.6 times what heights and noise explain: several rows of volts and amps share a time/,
  );
  expect(misfitWords({ misfit_ratio: 2 }, 10, 10, true)).toEqual([]);
});

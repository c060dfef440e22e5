import { expect, it } from "vitest";
import { readAnswer } from "../../../../web/answer/picture/readAnswer.ts";
import { answered } from "../answeredByHand.ts";

it("reads one pack at a place: yes with the whole band, no with none of it", () => {
  const answer = answered([4.4]);
  expect(readAnswer(answer, 0, 10, "metric")).toBe(
    "4.4 kWh, home with 10 km left or more: new: yes; winter: perhaps; ten years, winter: no.",
  );
  expect(readAnswer(answer, 0, 0, "metric")).toBe("4.4 kWh, home: new: yes; winter: yes; ten years, winter: perhaps.");
  expect(readAnswer(answer, 0, -5, "metric")).toContain("at most 5 km short");
});

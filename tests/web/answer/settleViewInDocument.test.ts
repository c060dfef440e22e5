import { nothing, render } from "lit-html";
import { expect, it } from "vitest";
import type { Settlement } from "../../../sim/index.ts";
import { settleView } from "../../../web/answer/settleView.ts";
import { answered } from "./answeredByHand.ts";

// 4.4 kWh are only just enough and 6 kWh are enough, so that only the first has anything to settle.
const answer = answered([4.4, 6]);

/** The words for the first pack, with these values from which it is decided. */
function wordsWith(decided: Pick<Settlement, "enough" | "notEnough">): string {
  const main = document.querySelector("main") as HTMLElement;
  const settlements = answer.settlements.map((each) => {
    if (!each) return each;
    const { enough: _, notEnough: __, ...others } = each;
    return { ...others, ...decided };
  });
  render(settleView({ ...answer, settlements }, 0, "metric"), main);
  return (main.textContent ?? "").replace(/\s+/g, " ");
}

it("has nothing to say of a pack whose verdict hangs on nothing, nor of none", () => {
  expect(settleView(answer, 1, "metric")).toBe(nothing);
  expect(settleView(answer, undefined, "metric")).toBe(nothing);
  expect(settleView(answer, 0, "metric")).not.toBe(nothing);
});

it("says from which value on the verdict is decided, on the sides that are", () => {
  const enough = { side: "below", value: 0.0129 } as const;
  const notEnough = { side: "above", value: 0.0149 } as const;
  expect(wordsWith({ enough, notEnough })).toContain(
    "Rolling resistance coefficient below 0.0129: enough; above 0.0149: not enough.",
  );
  expect(wordsWith({ notEnough })).toContain("Rolling resistance coefficient above 0.0149: not enough.");
  expect(wordsWith({})).not.toMatch(/below|above/);
});

it("says what to measure and how far the day may go either way", () => {
  const words = wordsWith({});
  expect(words).toContain("Only just.");
  expect(words).toContain("between 1 km short and 2 km left");
  expect(words).toContain("Measure first:");
});

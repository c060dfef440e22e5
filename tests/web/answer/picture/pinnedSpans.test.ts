import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { AnswerDrawing, RowFrame } from "../../../../web/answer/picture/answerDrawing.ts";
import { pinnedSpans } from "../../../../web/answer/picture/pinnedSpans.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const { document } = new JSDOM("").window;
const pen = penOf(document);
const frame = { toPixel: (left: number) => 300 + 10 * left, left_px: 100, right_px: 700 } as RowFrame;
const pinned = new Map([
  ["A", { new: { low: 5, value: 10, high: 15 }, tenYearsWinter: { low: -40, value: 0, high: 50 } }],
]);
const drawing = { document, pinned, pinnedWords: "pinned", units: "metric" } as unknown as AnswerDrawing;
const spans = (name: string, isChosen: boolean) =>
  pinnedSpans(pen, name, drawing, { y0: 100, space_px: 80, isChosen }, frame);

it("draws a pinned state at the top of a row for new and at its bottom for ten years in winter, within the picture", () => {
  const lines = spans("A", false).map((group) => {
    const line = group.querySelector("line");
    return ["x1", "x2", "y1"].map((name) => Number(line?.getAttribute(name)));
  });
  expect(lines).toEqual([
    [350, 450, 105],
    [100, 700, 174],
  ]);
});

it("is named once, at the chosen pack, and nothing is drawn of a pack that was not there", () => {
  expect(spans("A", true).map(({ textContent }) => textContent)).toEqual(["pinned", ""]);
  expect(spans("A", false).map(({ textContent }) => textContent)).toEqual(["", ""]);
  expect(spans("B", true)).toEqual([]);
});

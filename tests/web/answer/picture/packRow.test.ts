import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { Answer } from "../../../../sim/index.ts";
import type { AnswerDrawing } from "../../../../web/answer/picture/answerDrawing.ts";
import { packRow } from "../../../../web/answer/picture/packRow.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";
import { answered } from "../answeredByHand.ts";

const { document } = new JSDOM("").window;
const answer = answered([3, 4.4, 6]);

/** The row of a pack in a picture of three, the packs in their own order. */
function row(index: number, chosen: number, of: Answer = answer, changes: Partial<AnswerDrawing> = {}): SVGElement {
  const drawing: AnswerDrawing = {
    document,
    width_px: 900,
    rowHeight_px: 100,
    units: "metric",
    rows: [0, 1, 2],
    chosen,
    ...changes,
  };
  return packRow(penOf(document), of, drawing, {
    axis: { from: -20, to: 100, ticks: [0] },
    toPixel: (left) => 300 + 5 * left,
    top_px: 0,
    bottom_px: 300,
    left_px: 150,
    right_px: 880,
    isNarrow: false,
    index,
    place: index,
  });
}

const count = (group: SVGElement, selector: string) => group.querySelectorAll(selector).length;

it("has an edge above each row but the first, and one on either side of the chosen row, drawn once", () => {
  expect([0, 1, 2].map((index) => count(row(index, 1), ".edge"))).toEqual([0, 0, 0]);
  expect([0, 1, 2].map((index) => count(row(index, 1), ".edge-chosen"))).toEqual([0, 2, 0]);
  expect([0, 1, 2].map((index) => count(row(index, 0), ".edge"))).toEqual([0, 0, 1]);
});

it("names the marks of the chosen pack only", () => {
  expect(count(row(1, 1), ".mark")).toBe(3);
  expect(count(row(1, 1), ".mark-label")).toBe(3);
  expect(count(row(1, 0), ".mark")).toBe(3);
  expect(count(row(1, 0), ".mark-label")).toBe(0);
});

it("says so where the car does not drive the road with a pack, and has no mark for it", () => {
  const packs = answer.packs.map(({ left: _, ...pack }) => pack);
  const group = row(0, 0, { ...answer, packs });
  expect(group.textContent).toContain("The car does not drive this road with it.");
  expect(count(group, ".mark")).toBe(0);
});

it("has a year's evenings in place of the marks, for the pack that has them", () => {
  const evening = { left: 20, isWinter: false, isLongest: false };
  const evenings = new Map([["3 kWh", { new: [evening], old: [evening] }]]);
  expect(count(row(0, 1, answer, { evenings }), ".mark")).toBe(0);
  expect(count(row(2, 1, answer, { evenings }), ".mark")).toBe(3);
});

import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { RowFrame } from "../../../../web/answer/picture/answerDrawing.ts";
import { rings } from "../../../../web/answer/picture/longestRings.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";
import { answered } from "../answeredByHand.ts";

const { document } = new JSDOM("").window;
const drawing = { document, width_px: 900, rowHeight_px: 100, units: "metric", rows: [0], chosen: 0 } as const;

/** Five pixels a kilometre, coming home with nothing left at 400. */
function frame(changes: Partial<RowFrame> = {}): RowFrame {
  return {
    axis: { from: -60, to: 100, ticks: [0] },
    toPixel: (left) => 400 + 5 * left,
    top_px: 0,
    bottom_px: 100,
    left_px: 100,
    right_px: 880,
    isNarrow: false,
    index: 0,
    place: 0,
    ...changes,
  };
}

// 6 kWh go 60 km new and 15 km at ten years in winter, with nothing that is not known. Of a longest day of 20 km that leaves 40 km and
// 5 km short: 600 and 375 px. The line of the row is at 100 px, a row 100 px high.
function ringsOf(longestDay_km: number, changes: Partial<RowFrame> = {}, isChosen = true) {
  const line = { middle_px: 100, space_px: 100, isChosen };
  return rings(penOf(document), answered([6], 0, { longestDay_km }), 0, drawing, line, frame(changes));
}

/** Where the larger circle of each ring stands. */
const placesOf = (groups: readonly SVGElement[]) =>
  groups.map((group) => Number(group.querySelector("circle")?.getAttribute("cx")));
const wordsOf = (groups: readonly SVGElement[]) => groups[0]?.querySelector("text");

it("stands where the longest day leaves the car, new above the line and at ten years in winter below it", () => {
  const both = ringsOf(20);
  expect(placesOf(both)).toEqual([600, 375]);
  const [upper = 0, lower = 0] = both.map((group) => Number(group.querySelector("circle")?.getAttribute("cy")));
  expect(upper).toBeLessThan(100);
  expect(lower).toBeGreaterThan(100);
});

it("is left out where it lies beyond the picture, and where no day is longer than the usual one", () => {
  expect(placesOf(ringsOf(20, { left_px: 370 }))).toEqual([600]);
  expect(ringsOf(10)).toEqual([]);
});

it("names the day at its left, more shortly where there is less room, and not at all where there is none", () => {
  // "longest day, 20 km" takes 18 letters of 7 px: 464 to 590 px. "longest day" takes 77 px: from 513 px on. The words of the mark at 650 px
  // leave no room at the right.
  expect(wordsOf(ringsOf(20))?.textContent).toBe("longest day, 20 km");
  expect(wordsOf(ringsOf(20))?.getAttribute("x")).toBe("590");
  expect(wordsOf(ringsOf(20, { left_px: 510 }))?.textContent).toBe("longest day");
  expect(wordsOf(ringsOf(20, { left_px: 560 }))).toBeNull();
});

it("names it in the chosen row of a wide picture only", () => {
  expect(wordsOf(ringsOf(20, {}, false))).toBeNull();
  expect(wordsOf(ringsOf(20, { isNarrow: true }))).toBeNull();
});

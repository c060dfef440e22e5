import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { RowFrame } from "../../../../web/answer/picture/answerDrawing.ts";
import type { Evening } from "../../../../web/answer/picture/eveningDots.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";
import { extremesOf, yearRow } from "../../../../web/answer/picture/yearRow.ts";
import { answered } from "../answeredByHand.ts";

const { document } = new JSDOM("").window;
const evening = (left: number, isLongest = false): Evening => ({ left, isWinter: false, isLongest });

/** What a row is drawn of: five pixels a kilometre, coming home with nothing left at 400 px, the left edge at 300 px. */
function all(newer: readonly Evening[], older: readonly Evening[], isChosen = false, changes: Partial<RowFrame> = {}) {
  const answer = answered([6], 0, { longestDay_km: 20 });
  const frame: RowFrame = {
    axis: { from: -20, to: 90, ticks: [0] },
    toPixel: (left) => 400 + 5 * left,
    top_px: 0,
    bottom_px: 100,
    left_px: 300,
    right_px: 880,
    isNarrow: false,
    index: 0,
    place: 0,
    ...changes,
  };
  const drawing = { document, width_px: 900, rowHeight_px: 100, units: "metric", rows: [0], chosen: 0 } as const;
  const line = { middle_px: 50, space_px: 100, isChosen };
  return yearRow(penOf(document), answer, { new: newer, old: older }, drawing, line, frame);
}
const row = (...of: Parameters<typeof all>) => all(...of).filter(({ tagName }) => tagName === "text");

it("counts the days that end beyond the left edge, new and at ten years apart", () => {
  // The edge is 20 km short: one evening of the new pack and two of the old one lie beyond it.
  const words = row([evening(-21), evening(-5)], [evening(-30), evening(-21), evening(5)], false);
  expect(words.map(({ textContent }) => textContent)).toEqual(["‹ 1 day", "‹ 2 days"]);
  // Half a kilometre, two pixels and a half, is the least that is within.
  expect(row([evening(3)], [evening(-19.5)], false)).toEqual([]);
});

it("draws no evening where the words stand that count those beyond the edge, and counts it with them", () => {
  // "‹ 2 days" of 8 letters at 7 px with its margins ends 64 px from the edge: 12.8 km within it.
  const [words] = row([evening(-30), evening(-10), evening(-7)], [], false);
  expect(words.textContent).toBe("‹ 2 days");
  const dots = all([evening(-30), evening(-10), evening(-7)], []).flatMap((shape) =>
    [...(shape.getAttribute("d") ?? "").matchAll(/M([\d.]+) [\d.]+h0/g)].map(([, x]) => Number(x)),
  );
  expect(dots).toHaveLength(1);
  expect(dots[0]).toBeGreaterThan(300 + 4 + 7 * 8);
});

it("sets the words of the answer's band beside rings of longest days that reach down to them, not on these", () => {
  const wordsAt = (older: readonly Evening[]) => {
    const text = row([], older, true, { left_px: 100 }).find(
      ({ textContent }) => textContent === "usual winter day, ten years",
    );
    return Number(text?.getAttribute("x"));
  };
  const free = wordsAt([]);
  // Fifty rings in one pile reach down to the words' height, a few pixels left of where they end.
  const pile = Array.from({ length: 50 }, () => evening((free - 6 - 400) / 5, true));
  expect(wordsAt(pile)).toBeLessThan(free - 6);
  expect(wordsAt(pile.slice(0, 2))).toBe(free);
});

it("names the longest day of the chosen pack, at the left of its worst evening where there is room", () => {
  // 40 km are at 600 px; 18 letters of 7 px, 126 px, have room before it at 300 px and not at 470 px.
  const longestOf = (left_px: number) =>
    row([evening(50), evening(45, true), evening(40, true)], [], true, { left_px }).find((text) =>
      text.textContent?.includes("longest"),
    );
  expect(longestOf(300)?.textContent).toBe("longest day, 20 km");
  expect([longestOf(300)?.getAttribute("x"), longestOf(300)?.getAttribute("text-anchor")]).toEqual(["588", "end"]);
  expect([longestOf(470)?.getAttribute("x"), longestOf(470)?.getAttribute("text-anchor")]).toEqual(["612", "start"]);
});

it("names nothing in a row that is not chosen, and no longest day in a narrow picture", () => {
  const longest = [evening(40, true)];
  expect(row(longest, [], false)).toEqual([]);
  const narrow = row(longest, [], true, { isNarrow: true }).map(({ textContent }) => textContent);
  expect(narrow).toEqual(["winter, ten years"]);
});

it("reaches from the least to the most that is left, of both ages", () => {
  expect(extremesOf({ new: [evening(30), evening(12)], old: [evening(-4)] })).toEqual([-4, 30]);
  expect(extremesOf({ new: [], old: [] })).toEqual([]);
  expect(extremesOf(undefined)).toEqual([]);
});

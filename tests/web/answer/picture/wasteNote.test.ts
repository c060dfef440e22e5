import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { penOf } from "../../../../web/answer/picture/svg.ts";
import { wasteNote } from "../../../../web/answer/picture/wasteNote.ts";
import { answered } from "../answeredByHand.ts";

const pen = penOf(new JSDOM("").window.document);
// 4 kWh, 6 and 40: the largest carries many days for nothing. Home is at 100 px, a kilometre ten of them.
const answer = answered([4, 6, 40]);
const note = (index: number, first: number) =>
  wasteNote(pen, answer, index, "metric", { y_px: 50, first, toPixel: (left) => 100 + 10 * left });

it("says in two lines what the largest pack carries for nothing, from home on, and says it of no other", () => {
  const lines = note(2, 90);
  expect(lines.map(({ textContent }) => textContent)).toEqual([
    expect.stringMatching(/driving it never uses$/),
    expect.stringMatching(/more than 4 kWh, carried every day$/),
  ]);
  expect(lines.map((line) => [line.getAttribute("x"), line.getAttribute("y")])).toEqual([
    ["110", "50"],
    ["110", "66"],
  ]);
  expect(note(0, 90)).toEqual([]);
});

it("is left out where what is drawn of the pack leaves no room for its lines", () => {
  expect(note(2, 10)).toEqual([]);
});

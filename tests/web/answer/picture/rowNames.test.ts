import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { Answer } from "../../../../sim/index.ts";
import { rowNames } from "../../../../web/answer/picture/rowNames.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const pen = penOf(new JSDOM("").window.document);
const packs = [
  { name: "Leaf 24", mass_kg: 180.4, verdict: "enough" },
  { name: "A pack of a long name", mass_kg: 180.4 },
  { name: "Leaf 24", mass_kg: 180.4, verdict: "enough", stop: "over the axle's load" },
];
const answer = { packs } as unknown as Answer;
const at = { y0: 100, isNarrow: false, isChosen: false, rowHeight_px: 80, right_px: 300, units: "metric" } as const;
const lines = (index: number, changes: object = {}) => rowNames(pen, answer, index, { ...at, ...changes });
const words = (index: number, changes: object = {}) => lines(index, changes).map(({ textContent }) => textContent);

it("has name, weight and verdict, the name cut where it is long, a stop before any verdict", () => {
  expect(words(0)).toEqual(["Leaf 24", "180 kg", "enough"]);
  expect(words(1)).toEqual(["A pack of a lo…", "180 kg", "…"]);
  expect(words(2)).toEqual(["Leaf 24", "180 kg", "stop"]);
  expect(words(0, { isNarrow: true, units: "british" })).toEqual(["Leaf 24", "398 lb", "enough"]);
});

it("keeps its lines inside the row, closer together in a low one", () => {
  const heights = (rowHeight_px: number) => lines(0, { rowHeight_px }).map((line) => Number(line.getAttribute("y")));
  expect(heights(80)).toEqual([128, 147, 165]);
  expect(heights(48)).toEqual([114, 129, 144]);
});

it("is heavier for the chosen pack", () => {
  expect(lines(0)[0].getAttribute("font-weight")).toBe("600");
  expect(lines(0, { isChosen: true })[0].getAttribute("font-weight")).toBe("700");
});

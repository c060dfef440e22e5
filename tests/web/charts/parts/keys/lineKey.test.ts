import { expect, it } from "vitest";
import { drawFrame, type Frame } from "../../../../../web/charts/parts/figure/frame.ts";
import { ROW_PX } from "../../../../../web/charts/parts/figure/inRows.ts";
import { lineKey } from "../../../../../web/charts/parts/keys/lineKey.ts";
import { drawing } from "../../../../support/drawing.ts";
import { wordsOf } from "../../../../support/wordsOf.ts";

const lines = [
  { words: "as driven", style: { stroke: "black", strokeWidth: 2 } },
  { words: "as wanted", style: { stroke: "grey", strokeWidth: 1, strokeDasharray: "4 2" } },
];
const frame: Frame = { left: 50, right: 700, top: 80, bottom: 200, height: 240, x: [0, 10], y: [0, 1] };

function drawn(space_px: number) {
  const key = lineKey(lines, 6, space_px);
  const svg = drawFrame(drawing(), frame, [key.marks(frame, 20)]);
  key.writeNames(svg, 20);
  return { key, svg, words: wordsOf(svg).filter(({ text }) => text.startsWith("as ")) };
}

it("has its lines in one row where there is room and below each other where there is none", () => {
  expect(drawn(600).key.height_px).toBe(ROW_PX);
  expect(drawn(130).key.height_px).toBe(2 * ROW_PX);
  const [first, second] = drawn(600).words;
  expect(second?.base).toBe(first?.base);
  const [upper, lower] = drawn(130).words;
  expect((lower?.base ?? 0) - (upper?.base ?? 0)).toBe(ROW_PX);
});

it("shows a piece of each line with its own dash, 26 px long and clear of its name", () => {
  const { svg, words } = drawn(600);
  const pieces = [...svg.querySelectorAll("path")].filter((path) => path.getAttribute("d")?.includes("L"));
  expect(pieces).toHaveLength(2);
  const dashes = pieces.map(
    (piece) => piece.getAttribute("stroke-dasharray") ?? piece.parentElement?.getAttribute("stroke-dasharray") ?? "",
  );
  expect(dashes).toEqual(["", "4 2"]);
  const [from = 0, to = 0] = [...(pieces[0]?.getAttribute("d") ?? "").matchAll(/[ML]([\d.]+),/g)].map(([, x]) =>
    Number(x),
  );
  expect(to - from).toBeCloseTo(26, 6);
  expect(words[0]?.from).toBeGreaterThan(to);
});

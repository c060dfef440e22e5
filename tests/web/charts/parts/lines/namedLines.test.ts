import { expect, it } from "vitest";
import { packStyle } from "../../../../../web/charts/parts/figure/packStyle.ts";
import { type NamedLinesInput, namedLines } from "../../../../../web/charts/parts/lines/namedLines.ts";
import { drawing } from "../../../../support/drawing.ts";
import { wordsOf } from "../../../../support/wordsOf.ts";

const points = [
  { x: 0, y: 10 },
  { x: 5, y: 20, isHollow: true },
  { x: 10, y: 30 },
];

function drawn(changes: Partial<NamedLinesInput> = {}, name = "Six modules") {
  return namedLines(drawing(720), {
    lines: [{ name, style: packStyle(0), points }],
    xLabel: "Speed",
    yLabel: "Energy",
    x: [0, 10],
    y: [0, 40],
    top_px: 34,
    plotHeight_px: 100,
    isDotted: true,
    ...changes,
  });
}

/** Marks that are drawn, whole and hollow. */
const marks = (svg: SVGSVGElement) => svg.querySelectorAll('[aria-label="dot"] > *').length;

it("marks every point, or only the last, and those that are hollow always", () => {
  expect(marks(drawn().svg)).toBe(3);
  expect(marks(drawn({ isDotted: false }).svg)).toBe(2);
  const whole = points.map(({ x, y }) => ({ x, y }));
  const line = { name: "A", style: packStyle(0), points: whole };
  expect(marks(drawn({ isDotted: false, lines: [line] }).svg)).toBe(1);
});

it("leaves at the right the room that the names take, and no more than a quarter of the figure or so", () => {
  const short = drawn({}, "A").frame.right;
  const long = drawn({}, "Six modules, second-hand").frame.right;
  expect(short).toBeGreaterThan(long);
  // 26 % of 720 px is 187 px, and 26 px more stand beside.
  expect(drawn({}, "word ".repeat(40)).frame.right).toBeGreaterThanOrEqual(720 - 0.26 * 720 - 26);
});

it("names each line at its end, beyond the frame and within the figure", () => {
  const { svg, frame } = drawn();
  const name = wordsOf(svg).find(({ text }) => text === "Six modules");
  expect(name?.from).toBeGreaterThan(frame.right);
  expect(name?.to).toBeLessThanOrEqual(720);
});

it("is lower and has no words below where a figure on the same scale stands beneath", () => {
  const above = drawn({ xLabel: null });
  expect(above.frame.height).toBeLessThan(drawn().frame.height);
  expect(above.svg.textContent).not.toContain("Speed");
  expect(wordsOf(above.svg).filter(({ base }) => base > above.frame.bottom + 8)).toEqual([]);
});

it("draws a line without points as nothing, not even its name", () => {
  const { svg } = drawn({ lines: [{ name: "Never driven", style: packStyle(0), points: [] }] });
  expect(svg.textContent).not.toContain("Never driven");
  expect(marks(svg)).toBe(0);
});

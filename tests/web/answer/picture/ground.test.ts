import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import type { Frame } from "../../../../web/answer/picture/answerDrawing.ts";
import { ground } from "../../../../web/answer/picture/ground.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const pen = penOf(new JSDOM("").window.document);
/** Five pixels a kilometre; home at 300. */
const frame = {
  axis: { ticks: [-40, -20, -10, 0, 20, 40] },
  toPixel: (left: number) => 300 + 5 * left,
  top_px: 30,
  bottom_px: 200,
} as unknown as Frame;
const sides = { left_px: 90, right_px: 600, isNarrow: false, units: "metric" } as const;
const words = (changes: object = {}) =>
  ground(pen, frame, { ...sides, ...changes })
    .filter(({ tagName }) => tagName === "text")
    .map(({ textContent }) => textContent);

it("tints where it would not get home, and draws a line at every distance but home", () => {
  const drawn = ground(pen, frame, sides);
  const tint = drawn.find(({ tagName }) => tagName === "rect");
  expect(["x", "width", "y", "height"].map((name) => Number(tint?.getAttribute(name)))).toEqual([90, 210, 30, 170]);
  const lines = drawn.filter(({ tagName }) => tagName === "line").map((line) => Number(line.getAttribute("x1")));
  expect(lines).toEqual([100, 200, 250, 400, 500]);
});

it("numbers them, but not at the edge and not beside home", () => {
  // 40 short is 10 pixels from the edge, 10 short 50 from home.
  expect(words()).toEqual(["20 short", "home", "20", "40", "would not get home", "home, with this many km left"]);
  expect(words({ units: "british" }).at(-1)).toBe("home, with this many miles left");
});

it("says less on a narrow picture, and nothing of not getting home where there is no room", () => {
  expect(words({ isNarrow: true }).slice(-2)).toEqual(["not home", "home, with … km left"]);
  expect(words({ isNarrow: true, left_px: 240 })).toEqual(["home", "20", "40", "home, with … km left"]);
});

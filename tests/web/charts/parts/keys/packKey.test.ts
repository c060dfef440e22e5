import { expect, it } from "vitest";
import { drawFrame, type Frame } from "../../../../../web/charts/parts/figure/frame.ts";
import { ROW_PX } from "../../../../../web/charts/parts/figure/inRows.ts";
import { packStyle } from "../../../../../web/charts/parts/figure/packStyle.ts";
import { packKey } from "../../../../../web/charts/parts/keys/packKey.ts";
import { drawing } from "../../../../support/drawing.ts";

const packs = [
  { name: "Two modules", index: 0 },
  { name: "Six modules", index: 4 },
];
const frame: Frame = { left: 50, right: 700, top: 80, bottom: 200, height: 240, x: [0, 10], y: [0, 1] };

function drawn(space_px: number, chosen?: number, fill?: string) {
  const key = packKey(packs, 6, space_px, chosen, fill);
  const svg = drawFrame(drawing(), frame, [key.marks(frame, 20)]);
  key.writeNames(svg, 20);
  const fillOf = (mark: Element) => mark.getAttribute("fill") ?? mark.parentElement?.getAttribute("fill");
  const marks = [...svg.querySelectorAll('[aria-label="dot"] > *')];
  return { key, svg, fills: marks.map(fillOf) };
}

it("names every pack, in as many rows as it takes", () => {
  const wide = drawn(600);
  expect(wide.svg.textContent).toContain("Two modules");
  expect(wide.svg.textContent).toContain("Six modules");
  expect(wide.key.height_px).toBe(ROW_PX);
  expect(drawn(130).key.height_px).toBe(2 * ROW_PX);
});

it("has the pack's own colour by its place in the job, unless one colour is given for all", () => {
  expect(drawn(600).fills).toEqual([packStyle(0).colour, packStyle(4).colour]);
  expect(drawn(600, 4).fills[1]).toBe(packStyle(4, 4).colour);
  expect(packStyle(4, 4).colour).not.toBe(packStyle(4).colour);
  expect(drawn(600, undefined, "#123456").fills).toEqual(["#123456", "#123456"]);
});

it("cuts a name that has no room rather than let it out of the figure", () => {
  const { svg, height_px } = (() => {
    const key = packKey([{ name: "An invented pack with a very long name", index: 0 }], 6, 120);
    const on = drawFrame(drawing(), frame, [key.marks(frame, 20)]);
    key.writeNames(on, 20);
    return { svg: on, height_px: key.height_px };
  })();
  expect(height_px).toBe(ROW_PX);
  expect(svg.textContent).not.toContain("very long name");
});

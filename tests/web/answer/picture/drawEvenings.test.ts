import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { drawEvenings } from "../../../../web/answer/picture/drawEvenings.ts";
import type { Evening } from "../../../../web/answer/picture/eveningDots.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const day = (left: number, isWinter = false, isLongest = false): Evening => ({ left, isWinter, isLongest });

const toPixel = (left: number) => 100 + 4 * left;

const pen = penOf(new JSDOM("<!doctype html>").window.document);

const at = { middle_px: 50, above_px: 40, below_px: 40, aboveFrom_px: 0, belowFrom_px: 0, right_px: 400, toPixel };

it("is copied where the same evenings stand in the same place, and drawn anew elsewhere", () => {
  const evenings = { new: [day(10), day(30, true)], old: [day(5)] };
  const words = (where: typeof at) => drawEvenings(pen, evenings, where).map(({ outerHTML }) => outerHTML);
  const [first, again] = [drawEvenings(pen, evenings, at), drawEvenings(pen, evenings, at)];
  expect(again.map(({ outerHTML }) => outerHTML)).toEqual(first.map(({ outerHTML }) => outerHTML));
  for (const [i, shape] of again.entries()) expect(shape).not.toBe(first[i]);
  expect(words({ ...at, middle_px: 60 })).not.toEqual(words(at));
  expect(words({ ...at, toPixel: (left) => 90 + 4 * left })).not.toEqual(words(at));
});

it("rings the longest days, above the line new and below it at ten years, and leaves out what lies beyond the picture", () => {
  const shapes = drawEvenings(
    pen,
    { new: [day(5, false, true), day(-90, false, true)], old: [day(-3, true, true)] },
    at,
  );
  const rings = shapes.filter(({ tagName }) => tagName === "circle").map((ring) => Number(ring.getAttribute("cy")));
  expect(rings).toHaveLength(2);
  expect(rings[0]).toBeLessThan(50);
  expect(rings[1]).toBeGreaterThan(50);
});

it("keeps a tall pile of longest days within its row, every one of them a ring of its own", () => {
  const fifty = Array.from({ length: 50 }, () => day(5, false, true));
  const shapes = drawEvenings(pen, { new: fifty, old: fifty }, at);
  const rings = shapes.filter(({ tagName }) => tagName === "circle").map((ring) => Number(ring.getAttribute("cy")));
  expect(rings).toHaveLength(100);
  expect(new Set(rings).size).toBe(100);
  const [radius_px] = shapes.flatMap((shape) => (shape.tagName === "circle" ? [Number(shape.getAttribute("r"))] : []));
  expect(Math.min(...rings) - radius_px).toBeGreaterThanOrEqual(at.middle_px - at.above_px);
  expect(Math.max(...rings) + radius_px).toBeLessThanOrEqual(at.middle_px + at.below_px);
});

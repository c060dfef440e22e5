import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { drawEvenings } from "../../../../web/answer/picture/drawEvenings.ts";
import { type Evening, LEAST_px, pilesOf } from "../../../../web/answer/picture/eveningDots.ts";
import { penOf } from "../../../../web/answer/picture/svg.ts";

const day = (left: number, isWinter = false, isLongest = false): Evening => ({ left, isWinter, isLongest });

const toPixel = (left: number) => 100 + 4 * left;

const pen = penOf(new JSDOM("<!doctype html>").window.document);

const at = { middle_px: 50, above_px: 40, below_px: 40, aboveFrom_px: 0, belowFrom_px: 0, right_px: 400, toPixel };

describe("the piles of a year", () => {
  it("have a dot a usual day, winter next to the line, and none for the longest days", () => {
    const { dots, tallest } = pilesOf(
      [day(10), day(10, true), day(10), day(30), day(-20, false, true)],
      toPixel,
      40,
      0,
    );
    expect(dots).toHaveLength(4);
    expect(tallest).toBe(3);
    expect(dots.filter(({ isWinter }) => isWinter).map(({ place }) => place)).toEqual([0]);
  });

  it("take the pitch from the tallest pile, so that it has room and no day is moved", () => {
    const many = Array.from({ length: 15 }, () => day(10));
    const { pitch_px, tallest } = pilesOf(many, toPixel, 40, 0);
    expect(tallest).toBe(15);
    expect(pitch_px * tallest).toBeLessThanOrEqual(40);
    expect(pitch_px).toBeGreaterThan(LEAST_px);
  });

  it("are an outline with its days below two pixels a dot", () => {
    const many = Array.from({ length: 90 }, () => day(10));
    expect(pilesOf(many, toPixel, 40, 0).pitch_px).toBe(LEAST_px);
    const shapes = drawEvenings(pen, { new: many, old: [] }, at);
    expect(shapes.map(({ textContent }) => textContent)).toContain("tallest: 90 days");
  });
});

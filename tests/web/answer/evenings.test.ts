import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { drawEvenings } from "../../../web/answer/picture/drawEvenings.ts";
import { type Evening, eveningsByPack, LEAST_px, pilesOf } from "../../../web/answer/picture/eveningDots.ts";
import { readEvenings } from "../../../web/answer/picture/readEvenings.ts";
import { penOf } from "../../../web/answer/picture/svg.ts";

const day = (left: number, isWinter = false, isLongest = false): Evening => ({ left, isWinter, isLongest });
const toPixel = (left: number) => 100 + 4 * left;
const pen = penOf(new JSDOM("<!doctype html>").window.document);
const at = { middle_px: 50, above_px: 40, below_px: 40, left_px: 0, right_px: 400, toPixel };

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

it("reads how many driving days end with so much left, in the reader's unit", () => {
  const driven = { days: [], driven_degC: [0, 1], largestError_km: 0, confirmedDays: 0 };
  const days = [12, 8, 4, 20].map((left_km, k) => ({
    date: `${k + 1} Jan`,
    temperature_degC: 0,
    distance_km: 10,
    isWinter: true,
    kind: k === 3 ? ("off" as const) : ("usual" as const),
    left_km,
  }));
  const evenings_km = days.map(({ left_km }) => left_km);
  const packs = [0, 10].map((age_years) => ({
    name: "9 kWh",
    age_years,
    failingDays: [],
    evenings_km: evenings_km.map((left_km) => left_km - age_years),
  }));
  const byPack = eveningsByPack({ ...driven, days, packs }, "metric");
  expect(readEvenings("9 kWh", byPack, 8, "metric")).toBe(
    "9 kWh, new: 2 of 3 driving days end with 8 km left or more; at ten years 0.",
  );
  expect(readEvenings("none", byPack, 8, "metric")).toBeUndefined();
});

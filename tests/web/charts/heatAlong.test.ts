import { expect, it } from "vitest";
import type { HeatLine } from "../../../sim/index.ts";
import { heatAlong, ratedAlong } from "../../../web/charts/heatAlong.ts";
import { AMERICAN } from "../../../web/charts/parts/figure/figureUnits.ts";
import { drawing } from "../../support/drawing.ts";

const course = (name: HeatLine["name"], others: Partial<HeatLine>): HeatLine => ({
  name,
  times: 2,
  isEmpty: false,
  time_s: [0, 100],
  ...others,
});

// 293.15 K are 20 °C. The road takes 100 s, the hill 200 s.
const road = course("road", { motor_K: [293.15, 333.15], pack_K: [293.15, 303.15] });
const hill = course("hill", { time_s: [0, 200], motor_K: [293.15, 373.15] });

it("says how hot each thing gets on each course, and from where it gives less", () => {
  const { alt } = heatAlong([road, hill], { motor_K: 393.15 }, drawing());
  expect(alt).toBe(
    "motor, this road: up to 60 °C; pack, this road: up to 30 °C; motor, long hill: up to 100 °C; motor gives less from 120 °C.",
  );
  // 120 °C are 248 °F.
  expect(heatAlong([hill], { motor_K: 393.15 }, { ...drawing(), units: AMERICAN }).alt).toContain(
    "motor gives less from 248 °F",
  );
});

it("reads between moments, and nothing of a course that has ended", () => {
  const { read } = heatAlong([road, hill], {}, drawing());
  expect(read(50).values.map(({ text }) => text)).toEqual(["40 °C", "25 °C", "40 °C"]);
  expect(read(150).values.map(({ text }) => text)).toEqual(["ended", "ended", "80 °C"]);
});

it("draws the hottest line whole and the others dashed, so that they differ without colour", () => {
  const { svg } = heatAlong([road, hill], {}, drawing());
  const dashes = [...svg.querySelectorAll("path")]
    .filter((path) => Number(path.getAttribute("stroke-width")) > 1.5)
    .map((path) => path.getAttribute("stroke-dasharray"));
  expect(dashes).toHaveLength(3);
  expect(dashes.filter((dash) => dash === null || dash === "")).toHaveLength(1);
  expect(new Set(dashes).size).toBe(3);
});

it("shows shares of a continuous rating where that is all that is known, and says where nothing is", () => {
  const { alt, table } = ratedAlong([course("hill", { rated_frac: [0, 1.2] })], drawing());
  expect(alt).toBe("long hill: up to 120 %; continuous rating: 100 %.");
  expect(table.rows).toEqual([
    ["long hill", 0, 0],
    ["long hill", 100, 120],
  ]);
  expect(heatAlong([course("road", {})], { motor_K: 400 }, drawing()).alt).toMatch(/^Nothing is known/);
});

import { expect, it } from "vitest";
import { chanceOf } from "../../../../../sim/route/clean/draws/chance.ts";
import { drawHeights } from "../../../../../sim/route/clean/heights/drawHeights.ts";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { runSteps } from "../../../../../sim/route/log/steps.ts";
import { everySecond } from "../rowsByHand.ts";

const noise = {
  slope_ratio: 0.03,
  slopeLasts_m: 120,
  white_m: 0.5,
  correlated_m: 0.3,
  correlation_s: 60,
  isFiltered: false,
};
const line = timeline(
  everySecond(60, () => ({})),
  0,
  60,
);
const at_m = line.time_s.map((at_s) => 10 * at_s);

const drawn = (logged_m: Float64Array, seed = 1) =>
  runSteps(drawHeights(line, at_m, logged_m, noise, 20, chanceOf(seed)));

it("are about what was logged, a row a second and draw, and the same for the same seed", () => {
  const logged_m = at_m.map((way_m) => 100 + 0.02 * way_m);
  const heights_m = drawn(logged_m);
  expect(heights_m).toHaveLength(20 * 60);
  expect(drawn(logged_m)).toEqual(heights_m);
  for (let draw = 0; draw < 20; draw++) expect(Math.abs(heights_m[60 * draw + 30] - logged_m[30])).toBeLessThan(2);
});

it("lie the further apart the less is known", () => {
  const hole_m = at_m.map((way_m, i) => (i > 10 && i < 50 ? Number.NaN : 100 + 0.02 * way_m));
  const heights_m = drawn(hole_m);
  const spreadAt = (second: number) => {
    const values = Array.from({ length: 20 }, (_, draw) => heights_m[60 * draw + second]);
    return Math.max(...values) - Math.min(...values);
  };
  expect(spreadAt(30)).toBeGreaterThan(2 * spreadAt(5));
});

import { expect, it } from "vitest";
import { smoothHeight } from "../../../../../sim/route/clean/heights/smoothHeight.ts";

const noise = {
  slope_ratio: 0.03,
  slopeLasts_m: 120,
  white_m: 1,
  correlated_m: 0.3,
  correlation_s: 60,
  isFiltered: false,
};
const time_s = Float64Array.from({ length: 200 }, (_, i) => i);

it("keeps an even slope, and fills in heights that were not logged", () => {
  const distance_m = time_s.map((at_s) => 10 * at_s);
  const logged_m = distance_m.map((at_m, i) => (i % 7 === 3 ? Number.NaN : 100 + 0.03 * at_m));
  const found_m = smoothHeight(time_s, distance_m, logged_m, noise);
  // Known to a tenth of what one height is, of 200 of them.
  for (let i = 20; i < 180; i++) expect(Math.abs(found_m[i] - (100 + 0.3 * i))).toBeLessThan(0.1);
});

it("stands where the car stands", () => {
  const found_m = smoothHeight(
    time_s,
    new Float64Array(200),
    time_s.map((i) => 100 + (i % 2)),
    noise,
  );
  for (const height_m of found_m) expect(height_m).toBeCloseTo(found_m[0], 6);
});

import { expect, it } from "vitest";
import { mendHeights } from "../../../../../sim/route/clean/heights/mendHeights.ts";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";

/** Heights of a level road at 10 m/s, mended. */
function mended(height_m: (i: number) => number) {
  const time_s = Float64Array.from({ length: 30 }, (_, i) => i);
  const elevation_m = time_s.map(height_m);
  const repairs = new RepairList();
  mendHeights(
    time_s,
    time_s.map((at_s) => 10 * at_s),
    elevation_m,
    repairs,
    0,
  );
  return { elevation_m: [...elevation_m], detail: repairs.finish()[0]?.detail };
}

it("takes a step that stays out", () => {
  const { elevation_m, detail } = mended((i) => (i < 15 ? 100 : 140));
  expect(elevation_m).toEqual(new Array(30).fill(100));
  expect(detail).toBe("height stepped up 40 m at 00:00:15; taken out");
});

it("drops a single spike", () => {
  const { elevation_m, detail } = mended((i) => (i === 12 ? 150 : 100));
  expect(elevation_m).toEqual(new Array(30).fill(100));
  expect(detail).toBe("one height 50 m off at 00:00:12; dropped");
});

it("leaves a hill: 6 m beside what 35 % of the way would give", () => {
  // 3 m a second on 10 m of road.
  const hill = mended((i) => 100 + 3 * i);
  expect(hill.elevation_m[29]).toBe(187);
  expect(hill.detail).toBeUndefined();
});

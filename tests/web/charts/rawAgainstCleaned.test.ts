import { expect, it } from "vitest";
import { rawAgainstCleaned } from "../../../web/charts/rawAgainstCleaned.ts";
import { drawing } from "../../support/drawing.ts";

const log = (time_s: readonly number[], speed_mps: readonly number[]) => ({
  time_s: Float64Array.from(time_s),
  speed_mps: Float64Array.from(speed_mps),
});
// One gap, filled by the cleaning: from 10 s to 30 s. 10 m/s are 36 km/h.
const raw = log([0, 10, 20, 30], [10, 10, Number.NaN, 10]);
const cleaned = { ...log([0, 10, 20, 30], [10, 10, 12, 10]), isRepaired: Uint8Array.from([0, 0, 1, 1]) };

it("says how much was repaired, and since when", () => {
  expect(rawAgainstCleaned({ raw, cleaned }, drawing()).alt).toBe(
    "Speed as recorded (4 samples) and as cleaned over 30 s: 1 stretch repaired, 20 s in all, first at 10 s.",
  );
  const untouched = { ...cleaned, isRepaired: new Uint8Array(4) };
  expect(rawAgainstCleaned({ raw, cleaned: untouched }, drawing()).alt).toContain("nothing was repaired");
});

it("has an empty cell and says so where nothing was recorded", () => {
  const { table, read } = rawAgainstCleaned({ raw, cleaned }, drawing());
  const at20 = table.rows.find(([time_s]) => time_s === 20) ?? [];
  expect(at20[1]).toBe("");
  expect(Number(at20[2])).toBeCloseTo(43.2, 9); // 12 m/s
  expect(at20[3]).toBe("yes");
  expect(read(20).values).toEqual([
    { label: "as recorded", text: "nothing recorded" },
    { label: "cleaned", text: "43.2 km/h" },
  ]);
});

it("has a panel of height where either log has one, over the same time", () => {
  const heights = { ...cleaned, elevation_m: Float64Array.from([5, 6, 7, 8]) };
  const high = rawAgainstCleaned({ raw, cleaned: heights }, drawing());
  const flat = rawAgainstCleaned({ raw, cleaned }, drawing());
  expect(high.svg.textContent).toContain("Height (m)");
  expect(flat.svg.textContent).not.toContain("Height");
  expect(high.position?.to_px).toBeGreaterThan(flat.position?.to_px ?? 0);
});

it("says so where there is no sample at all", () => {
  const none = log([], []);
  expect(rawAgainstCleaned({ raw: none, cleaned: { ...none, isRepaired: new Uint8Array() } }, drawing()).alt).toMatch(
    /holds no sample/,
  );
});

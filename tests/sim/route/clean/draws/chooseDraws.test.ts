import { describe, expect, it } from "vitest";
import { chooseDraws } from "../../../../../sim/route/clean/draws/chooseDraws.ts";

const load = { mass_kg: 1000, f0_N: 100, f1_Npmps: 0, f2_Npmps2: 0 };

/** Three draws that drive ten seconds at 9, 12 and 10 m/s, stand 60 s and drive ten more at 5, 6 and 7 m/s. */
const speeds_mps = [
  [9, 5],
  [12, 6],
  [10, 7],
];
const SECONDS = 82;
const drives = {
  draws: 3,
  seconds: SECONDS,
  speed_mps: Float32Array.from(
    speeds_mps.flatMap(([first, last]) =>
      Array.from({ length: SECONDS }, (_, i) => (i >= 1 && i <= 10 ? first : i >= 71 && i <= 80 ? last : 0)),
    ),
  ),
};

/** Draws of so many goes at such a speed, each go ten seconds long and ten seconds of standing behind it. */
function goesAt(goes: readonly number[], speed_mps: readonly number[]) {
  const seconds = 82;
  const speeds = goes.flatMap((count, draw) =>
    Array.from({ length: seconds }, (_, i) => (i > 0 && i % 20 < 10 && i < 20 * count ? (speed_mps[draw] ?? 0) : 0)),
  );
  return { draws: goes.length, seconds, speed_mps: Float32Array.from(speeds) };
}

it("stops as often as the middle of the draws, and of those that do takes the middle energy", () => {
  // Of 1, 2, 2, 2 and 4 goes two are the middle; the energies of the five in order end with those of the second, fourth and third draw.
  const drives = goesAt([1, 2, 2, 2, 4], [1, 9, 13, 11, 2]);
  expect(chooseDraws(drives, undefined, load).pieces.map(({ chosen }) => chosen)).toEqual([1]);
});

describe("a drive out of three", () => {
  const { speed_mps, pieces } = chooseDraws(drives, undefined, load);
  it("takes of each piece between two rests the one of the middle energy", () => {
    expect(pieces.map(({ chosen }) => chosen)).toEqual([2, 1]);
    expect([speed_mps[5], speed_mps[40], speed_mps[75]]).toEqual([10, 0, 6]);
  });
  it("says of every draw what it needs for the piece", () => {
    // Ten seconds at 9, the second before and the one after at half of that.
    expect(pieces[0].distance_m[0]).toBeCloseTo(90, 9);
    expect([...pieces[0].goes]).toEqual([1, 1, 1]);
    expect(pieces[0].to).toBe(pieces[1].from);
  });
});

it("meets the smoothed heights at the ends of a piece", () => {
  const mean_m = new Float64Array(SECONDS).fill(100);
  const drawn_m = Float32Array.from({ length: 3 * SECONDS }, (_, k) => 105 + (k % SECONDS) / SECONDS);
  const { elevation_m, pieces } = chooseDraws(drives, { mean_m, drawn_m }, load);
  for (const { from, to } of pieces) {
    expect(elevation_m?.[from]).toBeCloseTo(100, 4);
    expect(elevation_m?.[to]).toBeCloseTo(100, 4);
  }
});

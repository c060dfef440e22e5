import { describe, expect, it } from "vitest";
import { segmentsOf } from "../../../../sim/plan/measured/segments.ts";
import { driveOf, times } from "./logsByHand.ts";

const cut = (speeds: readonly number[], columns: Parameters<typeof driveOf>[1] = {}) =>
  segmentsOf(driveOf(speeds, columns)).map(({ doing, from, to }) => [doing, from, to]);
/** Speeds that rise or fall evenly, from one row to the next. */
const ramp = (count: number, from_mps: number, by_mps: number) =>
  Array.from({ length: count }, (_, i) => from_mps + i * by_mps);

describe("a drive cut by what the car does", () => {
  it("stands, pulls away, cruises, brakes and stands again", () => {
    const speeds = [...times(20, 0), ...ramp(10, 1.5, 1.5), ...times(20, 15), ...ramp(10, 13.5, -1.5), ...times(20, 0)];
    const found = cut(speeds);
    expect(found.map(([doing]) => doing)).toEqual(["standing", "pulling away", "cruising", "braking", "standing"]);
    // Standing ends four rows before the first that moves, and begins again three after the last.
    expect(found[0]).toEqual(["standing", 0, 16]);
    expect(found[4][1]).toBe(62);
  });
  it("pulls away from 0.25 m/s2 on, by two rows on either side", () => {
    expect(cut(ramp(12, 5, 0.26))).toEqual([["pulling away", 0, 12]]);
    expect(cut(ramp(12, 5, 0.24))).toEqual([["cruising", 0, 12]]);
  });
  it("brakes where it slows harder than that, downhill already at a steady speed", () => {
    expect(cut(ramp(12, 9, -0.26))).toEqual([["braking", 0, 12]]);
    expect(cut(ramp(12, 9, -0.24))).toEqual([["cruising", 0, 12]]);
    // 9.81 times 2.6 in 100 is 0.255 m/s2; times 2.5 it is 0.245.
    expect(cut(times(12, 9), { grade_ratio: times(12, -0.026) })).toEqual([["braking", 0, 12]]);
    expect(cut(times(12, 9), { grade_ratio: times(12, -0.025) })).toEqual([["cruising", 0, 12]]);
  });
  it("climbs from 2 in 100 on", () => {
    expect(cut(times(12, 9), { grade_ratio: times(12, 0.021) })).toEqual([["climbing", 0, 12]]);
    expect(cut(times(12, 9), { grade_ratio: times(12, 0.019) })).toEqual([["cruising", 0, 12]]);
  });
  it("stands below 0.3 m/s, a receiver's noise at rest", () => {
    expect(cut(times(12, 0.29))).toEqual([["standing", 0, 12]]);
    expect(cut(times(12, 0.31))).toEqual([["cruising", 0, 12]]);
  });
});

describe("pieces too short or too long", () => {
  const climb = (rows: number) => [...times(12, 0), ...times(rows, 0.03), ...times(12, 0)];
  it("goes with what is before it where it is shorter than five seconds", () => {
    expect(cut(times(28, 9), { grade_ratio: climb(4) }).map(([, from]) => from)).toEqual([0, 16]);
    expect(cut(times(29, 9), { grade_ratio: climb(5) })).toEqual([
      ["cruising", 0, 12],
      ["climbing", 12, 17],
      ["cruising", 17, 29],
    ]);
  });
  it("is never taken into standing, which shows the accessories alone", () => {
    const speeds = [...times(12, 0), ...times(3, 0.5), ...times(12, 0)];
    const found = cut(speeds);
    expect(found.map(([doing]) => doing === "standing")).toEqual([true, false, false, true]);
    // Rows 12 to 14 move: four before them and three after them do not show what standing draws.
    expect([found[0][2], found[3][1]]).toEqual([8, 18]);
  });
  it("is cut from 67 seconds on, each piece about 45 s long", () => {
    expect(cut(times(67, 9))).toEqual([["cruising", 0, 67]]);
    expect(cut(times(68, 9))).toEqual([
      ["cruising", 0, 34],
      ["cruising", 34, 68],
    ]);
    expect(cut(times(135, 9)).map(([, from]) => from)).toEqual([0, 45, 90]);
  });
});

describe("parts of a drive", () => {
  const parts = (first: number, second: number) => ({ part: [...times(first, 0), ...times(second, 1)] });
  it("are never in one segment, however short the second", () => {
    expect(cut(times(24, 9), parts(12, 12)).map(([, from, to]) => [from, to])).toEqual([
      [0, 12],
      [12, 24],
    ]);
    expect(cut(times(15, 9), parts(12, 3)).map(([, from, to]) => [from, to])).toEqual([
      [0, 12],
      [12, 15],
    ]);
  });
  it("say nothing of each other's speed: no pull where the next begins faster, no motion where it stands", () => {
    expect(cut([...times(12, 5), ...times(12, 9)], parts(12, 12)).map(([doing]) => doing)).toEqual([
      "cruising",
      "cruising",
    ]);
    expect(cut([...times(12, 5), ...times(12, 0)], parts(12, 12)).map(([doing]) => doing)).toEqual([
      "cruising",
      "standing",
    ]);
    expect(cut([...times(12, 0), ...times(12, 5)], parts(12, 12)).map(([doing]) => doing)).toEqual([
      "standing",
      "cruising",
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { nearestUnit, speedRatio, speedUnitQuestion } from "../../../../sim/route/log/speedUnit.ts";
import { madeLog, steadyRows } from "../../../logs/madeFixes.ts";

/** Two minutes to the north at 20 m/s, the speed written as so much. */
const written = (speed_mps: number) => madeLog(steadyRows(0, 120, 20).map((row) => ({ ...row, speed_mps }))).fixes;
/** Speeds that rise to the most by steps, without positions. */
const alone = (most: number) =>
  madeLog(Array.from({ length: 60 }, (_, i) => ({ time_s: i, speed_mps: Math.min(most, 5 * i) }))).fixes;

it.each([
  [1, "mps"],
  [3.6, "kmh"],
  [1.944, "knots"],
  [2.237, "mph"],
  [2.6, undefined],
])("a ratio of %f to metres a second is %s", (ratio, unit) => {
  expect(nearestUnit(ratio)).toBe(unit);
});

it("compares recorded speed with that from positions", () => {
  const { ratio = 0, comparisons = 0, alike_frac } = speedRatio(written(72)) ?? {};
  // Metres of a degree are good to a few parts in ten thousand here.
  expect(ratio).toBeCloseTo(3.6, 2);
  // 100 m are five seconds, which are then begun anew.
  expect(comparisons).toBeGreaterThan(15);
  expect(alike_frac).toBe(1);
  expect(speedRatio(alone(50))).toBeUndefined();
});

describe("the unit", () => {
  it("is the one given, or the file's own, with a word where positions speak against it", () => {
    expect(speedUnitQuestion(written(72), "mph", "kmh")).toMatchObject({ guess: "mph", evidence: "given" });
    const stated = speedUnitQuestion(written(72), undefined, "mph");
    expect(stated).toMatchObject({ guess: "mph", decided: true });
    expect(stated.evidence).toMatch(/against positions look like kmh$/);
  });
  it("is that of the positions where nobody says", () => {
    expect(speedUnitQuestion(written(72), undefined, undefined)).toMatchObject({ guess: "kmh", decided: true });
  });
  it("without positions is the only one that a car could drive, or else a question", () => {
    // 200 are 55.6 m/s in km/h and more than 250 km/h in all others.
    expect(speedUnitQuestion(alone(200), undefined, undefined)).toMatchObject({ guess: "kmh", decided: true });
    const open = speedUnitQuestion(alone(60), undefined, undefined);
    expect(open).toMatchObject({ guess: "kmh", decided: false });
    expect(open.evidence).toMatch(/no positions to compare with; plausible are kmh, mph, mps, knots$/);
  });
});

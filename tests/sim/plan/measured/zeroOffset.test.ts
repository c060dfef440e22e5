import { describe, expect, it } from "vitest";
import { zeroOffset } from "../../../../sim/plan/measured/zeroOffset.ts";
import { driveOf, packLogOf, sameClock, times } from "./logsByHand.ts";

/** Stands of so many seconds with these amps at 100 V, twelve seconds of driving between them. Accessories of the job draw 60 W: 0.6 A. */
function zeroOf(stands: readonly (readonly [count: number, amps: number])[], accessories_W = 60) {
  const pieces = stands.flatMap(([count, amps]) => [
    { speeds: times(count + 1, 0), amps: [...times(count, amps), 50] },
    { speeds: times(12, 8), amps: times(12, 40) },
  ]);
  const speeds = pieces.flatMap((piece) => piece.speeds);
  const amps = pieces.flatMap((piece) => piece.amps);
  return zeroOffset(driveOf(speeds), packLogOf(times(speeds.length, 100), amps), sameClock, accessories_W);
}

describe("a car that stood switched off for a while", () => {
  it("shows the ammeter's zero there, and that rest is none of its accessories", () => {
    const { zero_A, how, off } = zeroOf([
      [15, 0.2],
      [15, 1.5],
    ]);
    expect({ zero_A, how }).toEqual({ zero_A: 0.2, how: "off" });
    expect(off.map(({ from_s }) => from_s)).toEqual([0.5]);
  });
  it("shows none where the amps are within 0.15 of nought", () => {
    expect(
      zeroOf([
        [15, -0.14],
        [15, 1.5],
      ]),
    ).toMatchObject({ zero_A: 0, how: "off" });
    expect(
      zeroOf([
        [15, -0.16],
        [15, 1.5],
      ]),
    ).toMatchObject({ zero_A: -0.16, how: "off" });
  });
  it("is one that draws less than a quarter of what it draws at its other rests", () => {
    const least = (amps: number) =>
      zeroOf([
        [15, amps],
        [15, 2],
      ]).how;
    expect(least(0.49)).toBe("off");
    expect(least(0.51)).toBe("unknown");
  });
  it("is not one whose rests differ by less than half of what its accessories draw", () => {
    const how = (accessories_W: number) =>
      zeroOf(
        [
          [15, 0.1],
          [15, 1.1],
        ],
        accessories_W,
      ).how;
    expect(how(199)).toBe("off");
    expect(how(201)).toBe("unknown");
  });
  it("has every rest left out that is near the least one, whatever lies in between", () => {
    const { off } = zeroOf([
      [15, 0.2],
      [15, 2.2],
      [15, 0.69],
      [15, 0.71],
    ]);
    // A quarter of the way from 0.2 to 2.2 A is 0.7 A.
    expect(off).toHaveLength(2);
  });
});

describe("a car that was on at every rest", () => {
  it("says nothing of the zero", () => {
    expect(
      zeroOf([
        [15, 0.6],
        [15, 0.7],
      ]),
    ).toEqual({ zero_A: 0, how: "unknown", off: [] });
  });
  it("cannot charge its pack: amps that seem to flow in are a zero, the job's accessories put back", () => {
    const { zero_A, how, off } = zeroOf([
      [15, -1],
      [15, -0.9],
    ]);
    expect({ how, off }).toEqual({ how: "charging", off: [] });
    expect(zero_A).toBeCloseTo(-1.6, 9);
    expect(zeroOf([[15, -0.14]]).how).toBe("unknown");
    expect(zeroOf([[15, -0.16]]).how).toBe("charging");
  });
});

it("looks at rests of ten seconds and more, and at their middle reading", () => {
  // Eleven readings are ten seconds; of the last second of a stand the car already moves in the next row.
  expect(zeroOf([[9, -3]]).how).toBe("unknown");
  expect(zeroOf([[11, -3]]).how).toBe("charging");
  expect(
    zeroOf([
      [15, 0.2],
      [9, 3],
    ]).how,
  ).toBe("unknown");
});

import { describe, expect, it } from "vitest";
import { classOfGap } from "../../../../../sim/route/clean/gaps/classOfGap.ts";
import { type RowByHand, rowsOf } from "../rowsByHand.ts";

/** The gap of so many seconds between two stretches of ten seconds, driven at such a speed on either side, so far apart. */
function gapOf(gap_s: number, far_m: number, speed_mps: number, { isBroken = false, isPlaced = true } = {}) {
  const row = (i: number, from_s: number, from_m: number, segment: number): RowByHand => ({
    time_s: from_s + i,
    speed_mps,
    segment,
    ...(isPlaced && { north_m: from_m + i * speed_mps }),
  });
  const before = Array.from({ length: 10 }, (_, i) => row(i, 0, 0, 0));
  const from_m = 9 * speed_mps + far_m;
  const after = Array.from({ length: 10 }, (_, i) => row(i, 9 + gap_s, from_m, isBroken ? 1 : 0));
  return classOfGap(rowsOf(...before, ...after), 10, 1);
}

describe("a gap", () => {
  it("is a tunnel where the way fits the speeds on both sides", () => {
    expect(gapOf(60, 900, 15)).toMatchObject({ kind: "tunnel", isCut: false, distance_m: expect.closeTo(900, -1) });
    expect(gapOf(60, 400, 15).kind).toBe("signalLoss");
  });
  it("is a parking where the car is found where it was lost", () => {
    expect(gapOf(600, 20, 1)).toMatchObject({ kind: "parked", isCut: false });
    expect(gapOf(7300, 400, 10)).toMatchObject({ kind: "parked", isCut: true });
  });
  it("is lost signal otherwise, cut after ten minutes, where no car could have driven it or the recorder broke off", () => {
    expect(gapOf(300, 900, 15)).toMatchObject({ kind: "signalLoss", isCut: false });
    expect(gapOf(601, 3000, 15).isCut).toBe(true);
    expect(gapOf(10, 800, 15).isCut).toBe(true);
    expect(gapOf(300, 900, 15, { isBroken: true }).isCut).toBe(true);
  });
});

it("goes by the speeds where there are no positions", () => {
  expect(gapOf(300, 0, 0, { isPlaced: false })).toMatchObject({ kind: "parked", isCut: false, distance_m: Number.NaN });
  expect(gapOf(50, 0, 15, { isPlaced: false })).toMatchObject({ kind: "signalLoss", isCut: false });
  expect(gapOf(70, 0, 15, { isPlaced: false })).toMatchObject({ kind: "signalLoss", isCut: true });
});

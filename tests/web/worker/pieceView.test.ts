import { expect, it } from "vitest";
import { Mended } from "../../../sim/index.ts";
import { pieceTrips, pieceView } from "../../../web/worker/pieceView.ts";
import type { Sorted } from "../../../web/worker/roads/driveOf.ts";

/** Two trips of a log of ten rows a second apart: rows 1 to 3 and rows 6 to 9, the first on one day and both on the next. */
function sorted(elevation_m = 100, hasTrack = true): Sorted {
  const rows = (from: number, to: number) => Float64Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const trip = (fromRow: number, toRow: number) => ({
    start_s: 1000 + fromRow,
    end_s: 1000 + toRow,
    fromRow,
    toRow,
    speed_mps: rows(fromRow, toRow),
    elevation_m: rows(fromRow, toRow).fill(elevation_m),
  });
  const flags = new Uint8Array(10);
  flags[2] = Mended.standing;
  flags[7] = Mended.bridged;
  const every = rows(0, 9);
  return {
    cleaned: {
      series: { flags },
      track: hasTrack ? { latitude_deg: every, longitude_deg: every } : undefined,
      // Recorded twice a second.
      raw: {
        time_s: Float64Array.from({ length: 20 }, (_, i) => 1000 + i / 2),
        speed_mps: Float64Array.from({ length: 20 }, (_, i) => i / 2),
        elevation_m: new Float64Array(20).fill(elevation_m),
      },
    },
    found: { trips: [trip(1, 3), trip(6, 9)] },
    days: [
      { date: "2024-05-03", trips: [0] },
      { date: "2024-05-04", trips: [0, 1] },
    ],
    places: [],
  } as unknown as Sorted;
}

it("finds the trips of a piece: the whole, a day or a trip, and refuses one without any", () => {
  const firstRows = (piece: string) => pieceTrips(sorted(), piece).map(({ fromRow }) => fromRow);
  expect(firstRows("whole")).toEqual([1, 6]);
  expect(firstRows("day:2024-05-03")).toEqual([1]);
  expect(firstRows("trip:1")).toEqual([6]);
  expect(() => firstRows("day:2024-05-09")).toThrow("found no trip in this part of the log");
  expect(() => firstRows("trip:2")).toThrow("wanted at least one");
});

it("lays trips end to end at a row a second, raw and cleaned on one clock", () => {
  const { cleaned, raw, tripRows, track } = pieceView(sorted(), "whole");
  expect(tripRows).toEqual([0, 3]);
  expect([...cleaned.time_s]).toEqual([0, 1, 2, 3, 4, 5, 6]);
  expect([...cleaned.speed_mps]).toEqual([1, 2, 3, 6, 7, 8, 9]);
  expect([...(track?.latitude_deg ?? [])]).toEqual([1, 2, 3, 6, 7, 8, 9]);
  // Rows 1 to 3 at half seconds, then 6 to 9 from the third second on.
  expect([...raw.time_s]).toEqual([0, 0.5, 1, 1.5, 2, 3, 3.5, 4, 4.5, 5, 5.5, 6]);
  expect([...raw.speed_mps]).toEqual([1, 1.5, 2, 2.5, 3, 6, 6.5, 7, 7.5, 8, 8.5, 9]);
});

it("shows what was bridged as repaired, and not where the car stood", () => {
  expect([...pieceView(sorted(), "whole").cleaned.isRepaired]).toEqual([0, 0, 0, 0, 1, 0, 0]);
});

it("has heights and positions only where the log has them", () => {
  const bare = pieceView(sorted(Number.NaN, false), "trip:0");
  expect(bare.cleaned).not.toHaveProperty("elevation_m");
  expect(bare.raw).not.toHaveProperty("elevation_m");
  expect(bare).not.toHaveProperty("track");
  const full = pieceView(sorted(), "trip:0");
  expect([...(full.cleaned.elevation_m ?? [])]).toEqual([100, 100, 100]);
});

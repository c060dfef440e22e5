import { expect, it } from "vitest";
import { logWorked } from "../../../../web/sections/parts/logWorked.ts";
import type { DayRow, Drive, PieceView, TripRow } from "../../../../web/worker/roads/roadsApi.ts";
import { drawing } from "../../../support/drawing.ts";

const day = (date: string, distance_m: number, changes: Partial<DayRow> = {}): DayRow => ({
  date,
  trips: 1,
  distance_m,
  driving_s: 1800,
  climb_m: 40,
  ...changes,
});
const trip: TripRow = {
  date: "2024-05-03",
  clock: "08:12",
  distance_m: 12_000,
  duration_s: 1200,
  mean_mps: 10,
  max_mps: 20,
  stops: 3,
  like: "",
  difference: "",
  bridged_frac: 0,
};

/** 60 s at 20 m/s straight north: 1200 m, a degree of latitude being 111.2 km. */
const view: PieceView = {
  piece: "whole",
  raw: { time_s: Float64Array.of(0, 60), speed_mps: Float64Array.of(20, 20) },
  cleaned: {
    time_s: Float64Array.from({ length: 61 }, (_, i) => i),
    speed_mps: new Float64Array(61).fill(20),
    isRepaired: new Uint8Array(61),
  },
  tripRows: [0],
};
const track = {
  latitude_deg: Float64Array.from({ length: 61 }, (_, i) => 50 + (i * 20) / 111_200),
  longitude_deg: new Float64Array(61),
};

/** What a log of these days and trips shows, for a job of a usual day of 38 km without packs. */
function worked(drive: Partial<Drive>, piece?: PieceView, cutsEnds = true) {
  const whole = { kind: "drive", trips: [trip], days: [], places: [], ...drive } as Partial<Drive> as Drive;
  const shown = { drive: whole, view: piece, labels: { 0: "the yard" }, cutsEnds };
  const all = [...logWorked({ shown, units: "metric", job: { usualDay_km: 38 }, candidates: [] }, drawing())];
  return {
    tables: all.flatMap((each) => ("rows" in each ? [each] : [])),
    figures: all.flatMap((each) => ("chart" in each ? [each] : [])),
  };
}

it("shows nothing of a log without a trip", () => {
  expect(worked({ trips: [] })).toEqual({ tables: [], figures: [] });
});

it("says in its tables what the log does not know", () => {
  const days = [
    day("2024-05-03", 12_000),
    day("2024-05-04", 0, { trips: 0, parked: { from: "18:05", long_s: 50_400, place: 0 } }),
    day("2024-05-05", 0, { trips: 0, parked: { from: "18:05", long_s: 50_400, place: 9 } }),
  ];
  const [trips, byDay] = worked({
    trips: [trip, { ...trip, climb_m: 31, like: "ECE-15", difference: "quicker" }],
    days,
  }).tables;
  // 10 m/s are 36 km/h, 20 m/s 72.
  expect(trips.rows[0].slice(2)).toEqual([
    "12 km",
    "20 min",
    "36 km/h",
    "72 km/h",
    "not known",
    "3",
    "nothing on board",
  ]);
  expect(trips.rows[1].slice(6)).toEqual(["31 m", "3", "ECE-15: quicker"]);
  const parked = byDay.rows.map((row) => row.at(-1) ?? "");
  expect(parked[0]).toBe("not in the log");
  expect(parked[1]).toMatch(/ from 18:05, the yard$/);
  expect(parked[2]).toMatch(/ from 18:05, unknown$/);
});

it("compares days where there are two or more with a drive, by the one in the middle", () => {
  const [first, second, third] = [day("2024-05-03", 30_000), day("2024-05-04", 10_000), day("2024-05-05", 20_000)];
  const parked = day("2024-05-06", 0, { trips: 0 });
  expect(worked({ days: [first, parked] }).figures).toEqual([]);
  const { figures } = worked({ days: [first, second, third, parked] });
  expect(figures.map(({ name }) => name)).toEqual(["logDays"]);
  expect(figures[0].caption).toContain("the middle day is 20 km");
});

it("draws the part that is looked at, with a map only where there are positions", () => {
  const names = (piece: PieceView) => worked({}, piece).figures.map(({ name }) => name);
  expect(names(view)).toEqual(["log"]);
  expect(names({ ...view, track })).toEqual(["log", "logMap"]);
  expect(names({ ...view, piece: "trip:7", track })).toEqual([]); // of a log that was there before
});

it("leaves the ends out of a map, and all of a trip that has nothing but ends", () => {
  const map = (piece: PieceView, cutsEnds: boolean) => worked({}, piece, cutsEnds).figures[1];
  expect(map({ ...view, track }, true).caption).toMatch(/, without the first and last 300 m of every trip$/);
  expect(map({ ...view, track }, false).caption).not.toContain("without");
  // 30 s at 20 m/s are 600 m: 300 m from either end.
  const { time_s, speed_mps, isRepaired } = view.cleaned;
  const short = {
    ...view,
    cleaned: {
      time_s: time_s.subarray(0, 29),
      speed_mps: speed_mps.subarray(0, 29),
      isRepaired: isRepaired.subarray(0, 29),
    },
    track: { latitude_deg: track.latitude_deg.subarray(0, 29), longitude_deg: track.longitude_deg.subarray(0, 29) },
  };
  expect(map(short, true).chart.alt).toContain("Every trip is shorter than the 600 m that maps leave out");
});

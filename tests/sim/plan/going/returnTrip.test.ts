import { describe, expect, it } from "vitest";
import { thereAndBack } from "../../../../sim/plan/going/returnTrip.ts";
import { traceOf } from "../../../support/bareCar.ts";

const rows = [
  [0, 0],
  [10, 36],
  [30, 36],
  [35, 0],
] as const;
/** 50 + 200 + 25 m; up by 20 m over the first 100 m, down by 5 m to the end. */
const profile = { distance_m: Float64Array.of(0, 100, 275), elevation_m: Float64Array.of(10, 30, 25) };
const hilly = thereAndBack(traceOf(rows, profile));
const heightsOf = (trace: ReturnType<typeof hilly.out>) => [
  [...(trace.profile?.distance_m ?? [])],
  [...(trace.profile?.elevation_m ?? [])],
];

describe("the way home", () => {
  it("has the speeds in reverse order of time, each for as long as on the way out", () => {
    const home = hilly.home(275);
    expect([...home.time_s]).toEqual([0, 5, 25, 35]);
    expect([...home.speed_mps]).toEqual([0, 10, 10, 0]);
  });

  it("has the heights from the end to the beginning", () => {
    expect(heightsOf(hilly.home(275))).toEqual([
      [0, 175, 275],
      [25, 30, 10],
    ]);
  });

  it("meets every height between in the order of the way that it drives", () => {
    const waves = {
      distance_m: Float64Array.of(0, 50, 100, 200, 275),
      elevation_m: Float64Array.of(10, 40, 30, 5, 25),
    };
    const wavy = thereAndBack(traceOf(rows, waves));
    expect(heightsOf(wavy.home(275))).toEqual([
      [0, 75, 175, 225, 275],
      [25, 5, 30, 40, 10],
    ]);
    expect(heightsOf(wavy.out(25))).toEqual([
      [0, 25, 75, 175, 250],
      [25, 40, 30, 5, 25],
    ]);
  });

  it("begins at the height of the place where the car stands", () => {
    expect(heightsOf(hilly.home(50))).toEqual([
      [0, 50],
      [20, 10],
    ]);
  });

  it("is level from the beginning of the road", () => {
    expect(heightsOf(hilly.home(0))).toEqual([
      [0, 1],
      [10, 10],
    ]);
  });

  it("is level on a level road", () => {
    expect(thereAndBack(traceOf(rows)).home(100).profile).toBeUndefined();
  });
});

describe("the way out", () => {
  it("is the road itself from its beginning", () => {
    expect(heightsOf(hilly.out(0))).toEqual([
      [0, 100, 275],
      [10, 30, 25],
    ]);
    expect([...hilly.out(0).time_s]).toEqual([0, 10, 30, 35]);
  });

  it("is what is left of its heights from a place along it", () => {
    expect(heightsOf(hilly.out(50))).toEqual([
      [0, 50, 225],
      [20, 30, 25],
    ]);
    expect(heightsOf(hilly.out(275))).toEqual([
      [0, 1],
      [25, 25],
    ]);
  });
});

it("makes the way from one place once, however often it is driven", () => {
  for (const way of [hilly.out, hilly.home]) {
    const once = way(40);
    expect(way(40)).toBe(once);
    expect(way(50)).not.toBe(once);
    expect(way(40)).toEqual(once);
  }
});

it("keeps a place within the road, and at an end that it reaches to rounding", () => {
  expect(hilly.placeFrom_m(50, 20)).toBe(70);
  expect(hilly.placeFrom_m(50, -20)).toBe(30);
  expect(hilly.placeFrom_m(50, -80)).toBe(0);
  expect(hilly.placeFrom_m(50, 400)).toBe(275);
  expect(hilly.placeFrom_m(0, 275 - 1e-8)).toBe(275);
  expect(hilly.placeFrom_m(275, -275 + 1e-8)).toBe(0);
  expect(hilly.placeFrom_m(0, 274)).toBe(274);
});

import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { changedDemo } from "../../../support/changedDemo.ts";

const out = { leaves: "7:40", arrives: "8:20", road: "udds" };
const home = { leaves: "17:00", arrives: "17:50", road: "udds", way: "back", parkedAt: "Garage, household socket" };
const day = (trips: readonly object[], more: object = {}) => ({ from: "monday", to: "friday", trips, ...more });

/** What the job's reader says against a demo with a week of these days, each with its path. */
function faultsOf(...days: readonly unknown[]): readonly string[] {
  try {
    readJob(changedDemo({ week: { days } }));
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(({ where, message }) => `${where}: ${message}`);
  }
}

it("a job without a week opens, and has none", () => {
  expect(readJob(changedDemo({ week: undefined })).week).toBeUndefined();
});

describe("a week", () => {
  it("is taken with trips, charging between them at night and at noon, and a day that is called something", () => {
    const noon = { ...out, parkedAt: "Wall unit, if one were fitted", plugged: { from: "12:00", to: "15:00" } };
    const night = { ...home, plugged: { from: "23:30", to: "7:30" } };
    expect(faultsOf(day([noon, night]))).toEqual([]);
    expect(faultsOf(day([out]), { from: "sunday", to: "sunday", name: "to my sister", trips: [home] })).toEqual([]);
    expect(faultsOf(day([]))).toEqual([]);
    expect(faultsOf(day([{ ...out, distance_km: 12, way: "thereAndBack" }]))).toEqual([]);
  });

  const garage = "Garage, household socket";
  it.each([
    [
      "that ends before it begins",
      [day([out], { from: "friday", to: "monday" })],
      "week.days.0.to: found Friday to Monday, a last day not before the first wanted",
    ],
    [
      "with a trip that arrives before it leaves",
      [day([{ ...out, arrives: "7:10" }])],
      "week.days.0.trips.0.arrives: found 7:10 after leaving at 7:40, a later time of the day wanted",
    ],
    [
      "with trips that overlap",
      [day([out, { ...home, leaves: "8:10" }])],
      "week.days.0.trips.1.leaves: found 8:10, while the trip before it is driven until 8:20: trips one after the other wanted",
    ],
    [
      "with a weekday twice",
      [day([out]), day([home], { from: "thursday", to: "saturday" })],
      "week.days.1.from: found Thursday in two days, each weekday once wanted",
    ],
    [
      "that charges while it drives",
      [day([{ ...out, parkedAt: garage, plugged: { from: "16:00", to: "17:30" } }, home])],
      "week.days.0.trips.0.plugged: found charging from 16:00 to 17:30 after a trip of Monday, but the car is driven from Monday 17:00 on: times at which it stands wanted",
    ],
    [
      "that charges before it is there",
      [day([out, { ...home, plugged: { from: "17:00", to: "20:00" } }])],
      "week.days.0.trips.1.plugged: found charging from 17:00 to 20:00 after a trip of Monday, but the car is driven from Tuesday 7:40 on: times at which it stands wanted",
    ],
    [
      "that charges nowhere",
      [day([{ ...out, plugged: { from: "12:00", to: "13:00" } }])],
      "week.days.0.trips.0.parkedAt: found times of charging and no place, one of the places to charge wanted",
    ],
    [
      "that charges for no time",
      [day([{ ...out, parkedAt: garage, plugged: { from: "12:00", to: "12:00" } }])],
      "week.days.0.trips.0.plugged.to: found 12:00 to 12:00, an end later than that wanted",
    ],
    [
      "over an unknown road",
      [day([{ ...out, road: "the moon" }])],
      'week.days.0.trips.0.road: found "the moon", the id of one of the roads wanted',
    ],
    [
      "at an unknown place",
      [day([{ ...out, parkedAt: "Barn" }])],
      'week.days.0.trips.0.parkedAt: found "Barn", one of the places to charge wanted (Garage, household socket; Wall unit, if one were fitted)',
    ],
    [
      "of no kilometres",
      [day([{ ...out, distance_km: 0 }])],
      "week.days.0.trips.0.distance_km: found 0 km, above 0 and at most 2000 km allowed",
    ],
    [
      "with a time that no clock shows",
      [day([{ ...out, leaves: "25:00" }])],
      'week.days.0.trips.0.leaves: found "25:00": a time of day from 0:00 to 23:59 wanted',
    ],
  ])("%s is refused in one sentence", (_, days, sentence) => {
    expect(faultsOf(...days)).toEqual([sentence]);
  });

  it("at a supply of 0 A is refused for its supply", () => {
    const supplies = [{ name: "Post", kind: "household", mode: "mode2", voltage_V: 230, current_A: 0 }];
    const week = { days: [day([{ ...out, parkedAt: "Post" }])] };
    expect(() => readJob(changedDemo({ supplies, week }))).toThrow(
      expect.objectContaining({
        problems: [
          expect.objectContaining({
            where: "supplies.0.current_A",
            message: "found 0 A, above 0 and at most 70 A allowed",
          }),
        ],
      }),
    );
  });
});

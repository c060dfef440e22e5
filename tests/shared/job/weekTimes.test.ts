import { describe, expect, it } from "vitest";
import { chargingFaults, dayAndTime, momentOf, timedTrips } from "../../../shared/job/weekTimes.ts";

const trip = (leaves: string, arrives: string, plugged?: { from: string; to: string }) => ({
  leaves,
  arrives,
  ...(plugged && { plugged }),
});
const commuting = {
  from: "monday" as const,
  to: "tuesday" as const,
  trips: [trip("8:00", "8:30"), trip("17:00", "17:45", { from: "23:00", to: "5:00" })],
};

describe("the trips of a week", () => {
  const trips = timedTrips([commuting]);
  it("are each of the days that an entry stands for, in hours from Monday on", () => {
    expect(trips.map(({ weekday, leaves_h, arrives_h }) => [weekday, leaves_h, arrives_h])).toEqual([
      ["monday", 8, 8.5],
      ["monday", 17, 17.75],
      ["tuesday", 32, 32.5],
      ["tuesday", 41, 41.75],
    ]);
  });
  it("are parked until the next one, the last into the next week", () => {
    expect(trips.map(({ nextLeaves_h }) => nextLeaves_h)).toEqual([17, 32, 41, 176]);
  });
  it("charge all the time that they are parked, or from the first time of the clock after that", () => {
    expect(trips[0].plugged_h).toEqual([8.5, 17]);
    expect(trips[1].plugged_h).toEqual([23, 29]);
  });
});

it("find a fault in charging while the car is driven", () => {
  const late = { ...commuting, trips: [trip("8:00", "8:30"), trip("17:00", "17:45", { from: "7:00", to: "9:00" })] };
  expect(chargingFaults([commuting])).toEqual([]);
  const [fault, ...others] = chargingFaults([late]);
  expect(others).toEqual([]);
  expect(fault.path).toEqual([0, "trips", 1, "plugged"]);
  expect(fault.message).toBe(
    "found charging from 7:00 to 9:00 after a trip of Monday, but the car is driven from Tuesday 8:00 on: times at which it stands wanted",
  );
});

it("says a moment as people do, also of the week after", () => {
  expect(dayAndTime(3 * 24 + 17 + 50 / 60)).toBe("Thursday 17:50");
  expect(momentOf(7 * 24 + 1)).toEqual({ weekday: "monday", time: "1:00" });
});

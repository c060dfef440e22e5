import { expect, it } from "vitest";
import { findPlaces } from "../../../../sim/route/trips/findPlaces.ts";
import { guessUtcOffset_s, summariseDays } from "../../../../sim/route/trips/summariseDays.ts";
import { found, H_s } from "./weekByHand.ts";

it("a week sums up by local day, with the longest parking and where it was", () => {
  const days = summariseDays(found, 0, findPlaces(found.parkings, 0));
  expect(days.map(({ date }) => date)).toEqual(["2024-04-29", "2024-04-30"]);
  expect(days[0].trips).toEqual([0, 1]);
  expect(days[0].distance_m / (2 * 15 * 585)).toBeCloseTo(1, 2);
  expect(days[0].longestParking?.place).toBe("home"); // overnight, longer than the day at work
  expect(days[1].longestParking?.place).toBe("work");
});

it("moves trips to another day where local time says so", () => {
  const days = summariseDays(found, -9 * H_s);
  expect(days[0].date).toBe("2024-04-28");
});

it("guesses local time from the longitude in whole hours", () => {
  expect(guessUtcOffset_s([Number.NaN, 8.4])).toBe(H_s);
  expect(guessUtcOffset_s([-118])).toBe(-8 * H_s);
  expect(guessUtcOffset_s([])).toBe(0);
});

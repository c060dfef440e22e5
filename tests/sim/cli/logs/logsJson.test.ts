import { expect, it } from "vitest";
import { daysAWeek, daysDriven_km, formatWord, logDaysJson } from "../../../../sim/cli/logs/logsJson.ts";
import type { RecordedDrives } from "../../../../sim/cli/logs/recordedDrives.ts";

const MONDAY_s = Date.UTC(2024, 3, 29) / 1000;
const day = (distance_m: number, trips: readonly number[], longestParking?: object) => ({
  date: "2024-04-29",
  trips,
  distance_m,
  driving_s: 600,
  climb_m: 12,
  longestParking,
});
const parking = { from_s: MONDAY_s, to_s: MONDAY_s + 3600, place: "home" };
const drives = {
  days: [day(17_560, [0, 1], parking), day(0, [])],
  clock: { isDated: true, isUtc: true, utcOffset_s: 0, words: "" },
} as unknown as RecordedDrives;

it("gives each day its trips and its longest parking, without saying where", () => {
  const [driven, still] = logDaysJson(drives);
  expect(driven).toEqual({
    date: "2024-04-29",
    trips: 2,
    distance_km: 17.56,
    driving_s: 600,
    climb_m: 12,
    longestParking: { from: "2024-04-29T00:00:00Z", to: "2024-04-29T01:00:00Z", duration_s: 3600, place: "home" },
  });
  expect(still.longestParking).toBeNull();
});

it("has the days on which the car was driven, to a tenth of a kilometre", () => {
  expect(daysDriven_km(drives)).toEqual([17.6]);
});

it("has the driven days a week by its dates, where those span one", () => {
  expect(daysAWeek(drives)).toBeUndefined();
  const on = (date: string, trips: readonly number[]) => ({ ...day(9000, trips), date });
  const dates = ["04-29", "05-01", "05-03", "05-06", "05-08", "05-10"].map((each) => on(`2024-${each}`, [0]));
  const still = on("2024-05-05", []);
  expect(daysAWeek({ ...drives, days: [...dates, still] } as unknown as RecordedDrives)).toBe(3);
});

it("calls a table by what divides its columns", () => {
  const word = (format: string, columns: number, layout: readonly string[]) =>
    formatWord({ format, guess: { columns: new Array(columns), layout } } as unknown as Parameters<
      typeof formatWord
    >[0]);
  expect(word("gpx", 3, [])).toBe("gpx");
  expect(word("table", 3, ["columns divided by tabs"])).toBe("tsv");
  expect(word("table", 3, ["columns divided by commas"])).toBe("csv");
});

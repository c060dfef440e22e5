import { describe, expect, it } from "vitest";
import { logClock, momentForPeople, momentForPrograms } from "../../../../sim/cli/logs/logClock.ts";
import type { JoinedLogs } from "../../../../sim/route/joinLogs.ts";
import type { LogFile, LogFormat } from "../../../../sim/route/log/logFile.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

const MORNING_s = Date.UTC(2024, 4, 3, 6, 12, 5) / 1000;

function clockOf(format: LogFormat, { from_s = MORNING_s, hasZone = true, utcOffset_s = 0, isPlaced = true } = {}) {
  const { fixes } = madeLog([{ time_s: from_s, ...(isPlaced && { north_m: 0, east_m: 0 }) }, { time_s: from_s + 1 }]);
  const joined = { fixes, hasZone, utcOffset_s } as unknown as JoinedLogs;
  return logClock(joined, [{ format } as LogFile]);
}

describe("the clock of a log", () => {
  it("is in the zone that the file states", () => {
    expect(clockOf("table", { utcOffset_s: -12_600 })).toMatchObject({
      utcOffset_s: -12_600,
      isUtc: true,
      words: "clock at UTC-3:30, as the file states",
    });
  });
  it("is guessed from the longitude where times are UTC: 8 degrees east are nearest to one hour", () => {
    const { utcOffset_s, words } = clockOf("gpx", { hasZone: false });
    expect(utcOffset_s).toBe(3600);
    expect(words).toMatch(/^clock at UTC\+1, guessed from the longitude/);
    expect(clockOf("nmea", { isPlaced: false }).words).toBe("clock at UTC");
  });
  it("is the file's own where nothing says more, and counts from the start without a date", () => {
    expect(clockOf("table", { hasZone: false })).toMatchObject({ isUtc: false, words: "clock as the file has it" });
    expect(clockOf("table", { from_s: 100 })).toMatchObject({ isDated: false, utcOffset_s: 0 });
  });
});

it("writes moments for people in local time and for programs in UTC", () => {
  const clock = clockOf("table", { utcOffset_s: 7200 });
  expect(momentForPeople(MORNING_s, clock)).toBe("2024-05-03 08:12");
  expect(momentForPrograms(MORNING_s, clock)).toBe("2024-05-03T06:12:05Z");
  expect(momentForPrograms(MORNING_s, clockOf("table", { hasZone: false }))).toBe("2024-05-03T06:12:05");
});

it("writes what has no date as time since the start", () => {
  const clock = clockOf("table", { from_s: 100 });
  expect(momentForPeople(245, clock)).toBe("after 4 min 5 s");
  expect(momentForPrograms(245, clock)).toBeNull();
});

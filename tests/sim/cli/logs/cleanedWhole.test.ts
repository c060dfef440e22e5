import { expect, it } from "vitest";
import { cleanedWhole } from "../../../../sim/cli/logs/cleanedWhole.ts";
import type { RecordedDrives } from "../../../../sim/cli/logs/recordedDrives.ts";
import { cleaned, found, week } from "../../route/trips/weekByHand.ts";

const log = { file: "logs/monday.csv" };
const drives = (changes: object = {}) =>
  ({ files: [{ log }], trips: found, cleaned, ...changes }) as unknown as RecordedDrives;

it("is all trips as one road, named after the first file", () => {
  const trace = cleanedWhole(drives());
  expect(trace).toMatchObject({ id: "monday", title: "logs/monday.csv, recorded and cleaned" });
  // Four drives of 600 s; the parking between them is left out.
  expect(trace.time_s[trace.time_s.length - 1]).toBeGreaterThan(4 * 595);
  expect(trace.time_s[trace.time_s.length - 1]).toBeLessThan(week.length + 10);
  expect(cleanedWhole(drives({ files: [{ log }, { log }, { log }] })).title).toMatch(/^logs\/monday\.csv and 2 more/);
});

it("is no road where nothing moved, and says why", () => {
  const none = { trips: { ...found, trips: [] } };
  expect(() => cleanedWhole(drives({ ...none, cleaned: { ...cleaned, isStill: true } }))).toThrow(
    "found a log without movement, there is no road to drive",
  );
  expect(() => cleanedWhole(drives(none))).toThrow(/found no trip of at least 50 m, there is no road to drive/);
});

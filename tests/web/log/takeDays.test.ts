import { describe, expect, it } from "vitest";
import { inventedYear } from "../../../shared/job/inventedYear.ts";
import { withPath } from "../../../shared/job/path.ts";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { drivenDays_km, logDaysAWeek, withLogDays } from "../../../web/log/takeDays.ts";
import type { DayRow } from "../../../web/worker/roads/roadsApi.ts";
import { demoJob } from "../../support/demoJob.ts";

const day = (km: number, trips = 1): DayRow => ({
  date: "2024-05-01",
  trips,
  distance_m: 1000 * km,
  driving_s: 3600,
  climb_m: 10,
});
const logOf = (...days_km: number[]) => ({ days: days_km.map((km) => day(km)) });

describe("days of a log", () => {
  it("are those on which it was driven, to a tenth of a kilometre", () => {
    expect(drivenDays_km({ days: [day(30.04), day(0, 0), day(12.36), day(0.03)] })).toEqual([30, 12.4]);
  });

  it("are the last 400 where there are more", () => {
    const list = drivenDays_km(logOf(...Array.from({ length: 500 }, (_, i) => i + 1)));
    expect([list.length, list[0], list.at(-1)]).toEqual([400, 101, 500]);
  });
});

describe("taken into the year", () => {
  it("are its list, measured, with their middle one as the usual day, and go with one undo", () => {
    const editor = createJobEditor({ job: demoJob(), drafts: {} });
    const before = editor.kept.value;
    expect(editor.change("days", (state) => withLogDays(state, logOf(30, 12, 95, 28, 31)))).toEqual([]);
    const { job } = editor.kept.value;
    expect(job.year).toEqual({ ...before.job.year, daysDriven_km: [30, 12, 95, 28, 31] });
    expect(job.usualDay_km).toBe(30);
    expect([job.origins["year.daysDriven_km"]?.from, job.origins["usualDay_km"]?.from]).toEqual([
      "measured",
      "measured",
    ]);
    editor.undo();
    expect(editor.kept.value).toEqual(before);
  });

  it("begin a year with the invented temperatures where the job has none, and take the place of typed days", () => {
    const bare = { job: withPath(demoJob(), "year", undefined), drafts: {} };
    const first = withLogDays(bare, logOf(30, 12, 95));
    expect(first.job.year).toEqual({ ...inventedYear, daysDriven_km: [30, 12, 95] });
    const typed = { ...first.job.origins, "year.daysDriven_km.1": { from: "typed" as const } };
    const again = withLogDays({ ...first, job: { ...first.job, origins: typed } }, logOf(20, 21));
    expect(again.job.year?.daysDriven_km).toEqual([20, 21]);
    expect(again.job.origins["year.daysDriven_km.1"]).toBeUndefined();
  });

  it("set the driving days a week by the log's own dates, measured, where those span a week", () => {
    const state = { job: demoJob(), drafts: { "year.daysAWeek": { typed: "?", problem: "found no number" } } };
    const dated = ["04-29", "05-01", "05-04", "05-06", "05-08", "05-11"].map((date) => ({
      ...day(30),
      date: `2024-${date}`,
    }));
    const log = { days: [...dated, { ...day(0, 0), date: "2024-05-12" }] };
    expect(logDaysAWeek(log)).toBe(3);
    const { job, drafts } = withLogDays(state, log);
    expect(job.year?.daysAWeek).toBe(3);
    expect(job.origins["year.daysAWeek"]?.from).toBe("measured");
    expect(drafts).toEqual({});
    // One day tells no week: the job's own stands, and what waits in its field.
    const short = withLogDays(state, logOf(30, 12));
    expect(short.job.year?.daysAWeek).toBe(state.job.year?.daysAWeek);
    expect(short.job.origins["year.daysAWeek"]).toEqual(state.job.origins["year.daysAWeek"]);
    expect(short.drafts).toEqual(state.drafts);
  });

  it("are nothing where the log was not driven", () => {
    const state = { job: demoJob(), drafts: {} };
    expect(withLogDays(state, { days: [day(0, 0)] })).toBe(state);
  });
});

import { describe, expect, it } from "vitest";
import type { ReadLogOptions } from "../../../../sim/route/log/logFile.ts";
import { guessColumns } from "../../../../sim/route/table/guessColumns.ts";
import { TableColumns } from "../../../../sim/route/table/tableColumns.ts";
import { TableTimes } from "../../../../sim/route/table/tableTimes.ts";
import { layoutOf } from "./layoutOf.ts";

const MAY_3_s = Date.UTC(2024, 4, 3) / 1000;

function timesOf(lines: readonly string[], options: ReadLogOptions = {}, name = "a.csv") {
  const layout = layoutOf(...lines);
  const guesses = guessColumns(layout);
  const times = new TableTimes(name, layout, guesses, new TableColumns(guesses, layout.decimal), options);
  const read = layout.rows.map((row) => times.read(row));
  return { read, ...times.settle(), words: times.words(), hasZone: times.hasZone };
}
const clocks = ["time,speed", "08:00:00,1", "08:00:01,2", "08:00:02,3"];
const dates = ["time,speed", "05/03/2024 00:00:00,1", "05/03/2024 00:00:01,2", "05/03/2024 00:00:02,3"];
const none = ["speed,note", "10,7", "12,7", "11,7"];

describe("clocks without a day", () => {
  it("ask for one", () => {
    const { questions, read, words } = timesOf(clocks);
    expect(questions).toMatchObject([{ name: "date", decided: false, evidence: "times of day without a date" }]);
    expect(read).toEqual([28_800, 28_801, 28_802]);
    expect(words).toBe("times of day");
  });
  it("have the one given, or the one in the file's name", () => {
    expect(timesOf(clocks, { date: "2024-05-03" }).read[0]).toBe(MAY_3_s + 28_800);
    const named = timesOf(clocks, {}, "20240503.csv");
    expect(named).toMatchObject({ shift_s: MAY_3_s, questions: [{ decided: true, guess: "2024-05-03" }] });
  });
});

describe("dates that read both ways", () => {
  it("ask which, and are of the day given", () => {
    expect(timesOf(dates).questions).toMatchObject([{ name: "date", decided: false }]);
    expect(timesOf(dates, { date: "2024-05-03" }).read[0]).toBe(MAY_3_s);
    expect(() => timesOf(dates, { date: "2024-06-03" })).toThrow(/the first date of a\.csv is written 05\/03\/2024/);
  });
});

describe("rows without times", () => {
  it("are counted by the interval given, or else ask for it", () => {
    expect(timesOf(none, { interval_s: 0.5 })).toMatchObject({ read: [0, 0.5, 1], words: "no times" });
    expect(timesOf(none).questions).toMatchObject([{ name: "interval", guess: "1", decided: false }]);
  });
});

it("says what stands where a time should", () => {
  const { read } = timesOf([...clocks, "later,4", "08:00:04,5"]);
  expect(read[3]).toEqual({ found: "later" });
  expect(read[4]).toBe(28_804);
});

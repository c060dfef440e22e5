import { describe, expect, it } from "vitest";
import { looksLikeValue, sampleRows, tableLayout } from "../../../../sim/route/table/tableLayout.ts";
import { layoutOf } from "./layoutOf.ts";

describe("a table", () => {
  it("is cut by what makes most lines of one width", () => {
    expect(layoutOf("a;b", "1,5;2", "1,6;3", "1,7;4")).toMatchObject({ delimiter: ";", decimal: ",", fieldCount: 2 });
    expect(layoutOf("a b c", "1 2 3", "4 5 6", "7 8 9")).toMatchObject({ delimiter: "blanks", fieldCount: 3 });
    expect(layoutOf("1\t2.5", "2\t3.5", "3\t4.5")).toMatchObject({ delimiter: "\t", decimal: ".", headers: [] });
  });
  it("has its header above the data, units between them and a preamble above both", () => {
    const found = layoutOf("made by a logger", "", "time,speed", "s,km/h", "0,10", "1,11", "2,12");
    expect(found).toMatchObject({ headers: ["time", "speed"], units: ["s", "km/h"], firstDataLine: 4 });
    expect(found.words).toContain("header in line 3");
    expect(found.rows[0]).toEqual(["0", "10"]);
  });
  it("is not there in words alone", () => {
    expect(tableLayout(["a letter", "to somebody", "with words"])).toBeUndefined();
  });
  it("is guessed by its first three hundred rows", () => {
    const lines = Array.from({ length: 500 }, (_, i) => `${i},${2 * i}`);
    expect(sampleRows(layoutOf(...lines))).toHaveLength(300);
  });
});

it.each([
  ["12.5", true],
  ["08:12:05", true],
  ["52°07'24\"N", true],
  ["36 km/h", true],
  ["3 May 2024 08:12:05", true],
  ["speed", false],
  ["", false],
  ["1".repeat(101), false],
])("%s as a value: %s", (cell, isValue) => {
  expect(looksLikeValue(cell)).toBe(isValue);
});

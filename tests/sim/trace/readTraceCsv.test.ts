import { describe, expect, it } from "vitest";
import { InputError, type Problem } from "../../../shared/problems.ts";
import { readTraceCsv } from "../../../sim/trace/readTraceCsv.ts";

function faultsOf(text: string): readonly Problem[] {
  try {
    readTraceCsv("monday.csv", text);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error("it was read without a fault");
}

describe("a sound trace", () => {
  it("turns km/h, mph and m/s into m/s", () => {
    expect(readTraceCsv("a.csv", "time_s,speed_kmh\n0,0\n1,36").speed_mps[1]).toBeCloseTo(10, 12);
    expect(readTraceCsv("a.csv", "time_s,speed_mph\n0,0\n1,10").speed_mps[1]).toBeCloseTo(4.4704, 12);
    expect(readTraceCsv("a.csv", "time_s,speed_mps\n0,0\n1,10").speed_mps[1]).toBe(10);
  });

  it("takes its name from the file, without the ending", () => {
    expect(readTraceCsv("monday.csv", "time_s,speed_mps\n0,0\n1,10")).toMatchObject({ id: "monday", title: "monday" });
  });

  it("takes columns in any order, quoted cells, spaces, a byte order mark, other line ends and blank lines at the end", () => {
    const trace = readTraceCsv("a.csv", '\uFEFF"speed_mps", time_s\r\n"1.5",0\r\n 2e0 ,0.5\r\n\r\n\n');
    expect([...trace.time_s]).toEqual([0, 0.5]);
    expect([...trace.speed_mps]).toEqual([1.5, 2]);
  });

  it("counts time from its first row", () => {
    expect([...readTraceCsv("a.csv", "time_s,speed_mps\n100,0\n101,1\n103,1").time_s]).toEqual([0, 1, 3]);
  });

  it("has no profile where no height is given", () => {
    expect(readTraceCsv("a.csv", "time_s,speed_mps\n0,0\n1,10").profile).toBeUndefined();
  });

  it("turns height by time into height by distance, rows at rest merged into one place", () => {
    const rows = ["0,0,5", "1,0,5", "2,10,6", "3,10,7", "4,0,8", "5,0,8"];
    const { profile } = readTraceCsv("a.csv", ["time_s,speed_mps,elevation_m", ...rows].join("\n"));
    expect([...(profile?.distance_m ?? [])]).toEqual([0, 5, 15, 20]);
    expect([...(profile?.elevation_m ?? [])]).toEqual([5, 6, 7, 8]);
  });

  it("may reach 400 km/h in any unit", () => {
    expect(readTraceCsv("a.csv", "time_s,speed_kmh\n0,0\n1,400").speed_mps[1]).toBeCloseTo(400 / 3.6, 9);
    expect(readTraceCsv("a.csv", "time_s,speed_mps\n0,0\n1,111.111").speed_mps[1]).toBe(111.111);
  });
});

describe("a fault is told with its line, what was found and what is wanted", () => {
  const header = "time_s,speed_kmh";
  const cases: readonly [what: string, text: string, code: string, where: string, message: string][] = [
    ["nothing at all", "", "trace-empty", "monday.csv", "found nothing in it"],
    ["blank lines only", "\n \n", "trace-empty", "monday.csv", "found nothing in it"],
    ["a header alone", header, "trace-empty", "monday.csv", "found a header and no row"],
    ["one point", `${header}\n0,0`, "trace-one-point", "monday.csv", "found one row, at least two"],
    ["time going backward", `${header}\n0,0\n2,5\n1,5`, "trace-time", "monday.csv line 4", "found 1 s after 2 s"],
    ["time standing still", `${header}\n0,0\n0,5`, "trace-time", "monday.csv line 3", "found 0 s after 0 s"],
    ["NaN", `${header}\n0,0\n1,NaN`, "trace-number", "monday.csv line 3", 'found "NaN" in speed_kmh'],
    ["infinity", `${header}\n0,0\n1,Infinity`, "trace-number", "monday.csv line 3", 'found "Infinity"'],
    ["a number too large", `${header}\n0,0\n1e999,5`, "trace-number", "monday.csv line 3", 'found "1e999" in time_s'],
    ["a hexadecimal number", `${header}\n0,0\n1,0x10`, "trace-number", "monday.csv line 3", 'found "0x10"'],
    ["a unit in a cell", `${header}\n0,0\n1,5 km/h`, "trace-number", "monday.csv line 3", 'found "5 km/h"'],
    ["a blank cell", `${header}\n0,0\n1,`, "trace-blank", "monday.csv line 3", "found nothing in speed_kmh"],
    ["a blank line inside", `${header}\n0,0\n\n1,5`, "trace-cells", "monday.csv line 3", "found 1 cells"],
    ["a decimal comma", `${header}\n0,0\n1,5,5`, "trace-cells", "monday.csv line 3", "found 3 cells, the header has 2"],
    ["a negative speed", `${header}\n0,0\n1,-3`, "trace-speed", "monday.csv line 3", "found -3 km/h"],
    ["900 km/h", `${header}\n0,0\n1,900`, "trace-speed", "monday.csv line 3", "at most 400 km/h"],
    ["900 mph", "time_s,speed_mph\n0,0\n1,900", "trace-speed", "monday.csv line 3", "at most 249 mph"],
    [
      "a height above any road",
      `${header},elevation_m\n0,0,5\n1,5,99999`,
      "trace-elevation",
      "monday.csv line 3",
      "99999",
    ],
    [
      "a slope that no road has",
      `${header},elevation_m\n0,0,10\n1,3,10\n2,3,15\n3,0,15`,
      "trace-steep",
      "monday.csv line 4",
      "found 5 m of rise in 0.833 m of road",
    ],
    ["an unknown column", `${header},gear\n0,0,1\n1,5,1`, "trace-column-unknown", "monday.csv line 1", '"gear"'],
    [
      "a column twice",
      "time_s,time_s,speed_mps\n0,0,0\n1,1,1",
      "trace-column-twice",
      "monday.csv line 1",
      "time_s twice",
    ],
    [
      "two speeds",
      "time_s,speed_mps,speed_kmh\n0,0,0\n1,1,3.6",
      "trace-column-speeds",
      "monday.csv line 1",
      "speed_mps and",
    ],
    ["no time", "speed_mps,elevation_m\n0,0\n1,1", "trace-column-missing", "monday.csv line 1", "no column time_s"],
    ["no speed", "time_s,elevation_m\n0,0\n1,1", "trace-column-missing", "monday.csv line 1", "no column of speeds"],
    ["a car that never moves", `${header}\n0,0\n1,0`, "trace-still", "monday.csv", "a speed of 0 in every row"],
    ["a trace of years", `${header}\n0,0\n1e9,5`, "trace-long", "monday.csv", "1000000000 s"],
    ["semicolons", "time_s;speed_kmh\n0;0\n1;5", "trace-column-unknown", "monday.csv line 1", '"time_s;speed_kmh"'],
  ];

  it.each(cases)("%s", (_, text, code, where, message) => {
    const fault = faultsOf(text).find((one) => one.code === code);
    expect(fault).toMatchObject({ code, where, message: expect.stringContaining(message) });
  });

  it("says every fault of a file at once", () => {
    const text = "time_s,speed_kmh\n0,-1\n2,x\n1,900\n3\n4,";
    expect(faultsOf(text).map(({ code, where }) => `${where} ${code}`)).toEqual([
      "monday.csv line 2 trace-speed",
      "monday.csv line 3 trace-number",
      "monday.csv line 4 trace-time",
      "monday.csv line 4 trace-speed",
      "monday.csv line 5 trace-cells",
      "monday.csv line 6 trace-blank",
    ]);
  });

  it("counts the rest of a list that nobody would read to its end", () => {
    const rows = Array.from({ length: 5000 }, (_, i) => `${i},-1`);
    const faults = faultsOf(["time_s,speed_kmh", ...rows].join("\n"));
    expect(faults).toHaveLength(101);
    expect(faults[100]?.message).toBe("found 4900 more faults of these kinds");
  });

  it("knows a photograph, whatever its bytes", () => {
    const jpeg = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0x10, 0x4a, 0x46, 0x49, 0x46, 0x31, 0x0a, 0x2c, 0x0a]);
    expect(faultsOf(jpeg.toString("utf8"))).toEqual([
      { code: "trace-not-text", where: "monday.csv", message: expect.stringContaining("photograph") },
    ]);
    expect(faultsOf("time_s,speed_kmh\n0,\u0000\n")[0]?.code).toBe("trace-not-text");
  });
});

import { expect, it } from "vitest";
import type { ReadLogOptions } from "../../../../sim/route/log/logFile.ts";
import { TableReading } from "../../../../sim/route/table/tableReading.ts";
import { layoutOf } from "./layoutOf.ts";

function read(header: string, rows: readonly string[], options: ReadLogOptions = {}) {
  const reading = new TableReading("a.csv", layoutOf(header, ...rows), options);
  reading.lines(rows, 2);
  return reading.finish("utf-8");
}
const columnOf = (column: Float64Array) => [...column].map((value) => Math.round(1e9 * value) / 1e9);

it("has speeds in m/s by the unit of their header", () => {
  const { fixes } = read("time,speed (km/h)", ["0,36", "1,72", "2,36"]);
  expect(columnOf(fixes.speed_mps)).toEqual([10, 20, 10]);
  expect([...fixes.line]).toEqual([2, 3, 4]);
});

it("turns amps round where most of them are negative while moving", () => {
  const rows = ["0,36,108,-20", "1,36,107,-30", "2,36,108,-10"];
  const { fixes, questions } = read("time,speed (km/h),pack voltage (V),pack current (A)", rows);
  expect([...(fixes.extras.packCurrent_A ?? [])]).toEqual([20, 30, 10]);
  expect(questions.find(({ name }) => name === "currentSign")).toMatchObject({ guess: "-1", decided: true });
});

it("keeps the rows of one car", () => {
  const rows = ["0,36,Van", "1,36,Van", "2,72,Saloon", "3,36,Van"];
  const { fixes } = read("time,speed (km/h),vehicle", rows, { vehicle: "Saloon" });
  expect([...fixes.time_s]).toEqual([2]);
});

it("says of each line that cannot be used what is wrong with it", () => {
  const rows = ["0,50.1,8.1", "1,50.2,8.2", "2,50.3,8.3", "x,50.4,8.4", "4,99,8.5", "5,,"];
  const { fixes, badLines, problems } = read("time,lat,lon", rows);
  expect(fixes.count).toBe(3);
  expect(badLines).toBe(3);
  expect(problems.map(({ code, where }) => [code, where])).toEqual([
    ["badTime", "a.csv line 5"],
    ["badPosition", "a.csv line 6"],
    ["badLine", "a.csv line 7"],
  ]);
});

it("refuses a table without speeds or positions, naming its columns", () => {
  expect(() => read("time,oil pressure", ["0,3", "1,4", "2,5"])).toThrow(
    "found the columns time, oil pressure, wanted a speed, or a latitude and a longitude",
  );
});

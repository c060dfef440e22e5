import { expect, it } from "vitest";
import type { ColumnGuess, ColumnRole } from "../../../../sim/route/log/logFile.ts";
import { TableColumns } from "../../../../sim/route/table/tableColumns.ts";

const guess = (index: number, role: ColumnRole | "none", unit = ""): ColumnGuess => ({
  index,
  header: "",
  role,
  unit,
  evidence: "",
  sample: "",
});
const columns = new TableColumns(
  [guess(0, "none"), guess(2, "height", "ft"), guess(1, "packVoltage", "mV"), guess(3, "stateOfCharge")],
  ",",
);

it("finds a role's cell, empty where the row or the table has none", () => {
  const row = ["x", "108000", "100"];
  expect(columns.cell(row, "packVoltage")).toBe("108000");
  expect(columns.cell(row, "stateOfCharge")).toBe("");
  expect(columns.cell(row, "speed")).toBe("");
  expect([columns.has("height"), columns.has("speed")]).toEqual([true, false]);
});

it("turns its number into SI", () => {
  const row = ["x", "108000,5", "100"];
  expect(columns.number(row, "packVoltage")).toBeCloseTo(108.0005, 9);
  expect(columns.number(row, "height")).toBeCloseTo(30.48, 9);
});

it("has no number out of bounds, in words, or of no column", () => {
  const row = ["x", "2000001", "none", "101"];
  for (const role of ["packVoltage", "height", "stateOfCharge", "speed"] as const)
    expect(columns.number(row, role)).toBeNaN();
});

import { describe, expect, it } from "vitest";
import {
  countsRows,
  looksLikeAngle,
  looksLikeHeight,
  looksLikeSpeed,
  moves,
  risesSteadily,
} from "../../../../sim/route/table/looksLike.ts";
import type { SampleColumn } from "../../../../sim/route/table/sampleColumns.ts";

const columnOf = (...cells: readonly string[]): SampleColumn => ({
  index: 0,
  header: "",
  unit: "",
  named: "none",
  cells,
  numbers: cells.map(Number).filter((value) => !Number.isNaN(value)),
});

it("rises steadily where nine in ten rise", () => {
  const rising = Array.from({ length: 11 }, (_, i) => i);
  expect(risesSteadily(rising)).toBe(true);
  expect(risesSteadily(rising.with(5, 3))).toBe(true);
  expect(risesSteadily(rising.with(5, 3).with(9, 1))).toBe(false);
  expect(risesSteadily([1, 2])).toBe(false);
});

it("moves unless every cell is the same", () => {
  expect(moves(["8:00", "8:00", "8:00"])).toBe(false);
  expect(moves(["8:00", "8:00", "8:01"])).toBe(true);
  expect(moves(["8:00", "8:00"])).toBe(true);
});

it("counts rows by ones", () => {
  expect(countsRows([7, 8, 9])).toBe(true);
  expect(countsRows([7, 9])).toBe(false);
  expect(countsRows([0.5, 1.5])).toBe(false);
});

describe("an angle", () => {
  it("has four decimals and hardly moves", () => {
    expect(looksLikeAngle(columnOf("50.12345", "50.12346", "50.12347"))).toBe(true);
    expect(looksLikeAngle(columnOf("50.12", "50.13", "50.14"))).toBe(false);
    expect(looksLikeAngle(columnOf("50.12345", "900.12346"))).toBe(false);
  });
});

it("a speed goes up and down between 0 and 250", () => {
  expect(looksLikeSpeed(columnOf("0", "10", "5", "8"))).toBe(true);
  expect(looksLikeSpeed(columnOf("0", "10", "20", "30"))).toBe(false);
  expect(looksLikeSpeed(columnOf("0", "10", "5", "251"))).toBe(false);
  expect(looksLikeSpeed(columnOf("5", "6", "5", "6"))).toBe(false);
});

it("a height lies where roads do and makes no steps of 60 m", () => {
  expect(looksLikeHeight(columnOf("410.5", "411.5", "410.0"))).toBe(true);
  expect(looksLikeHeight(columnOf("410", "471", "410"))).toBe(false);
  expect(looksLikeHeight(columnOf("1", "2", "3"))).toBe(false);
  expect(looksLikeHeight(columnOf("6001", "6002.5"))).toBe(false);
});

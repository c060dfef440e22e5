import { describe, expect, it } from "vitest";
import { readMotorMapCells } from "../../../../sim/plan/motorMap/readMotorMapCells.ts";

const cellsOf = (...lines: readonly string[]) =>
  readMotorMapCells("map.csv", lines.join("\n")).cells.map(({ speed_rpm, torque_Nm, value }) => [
    speed_rpm,
    torque_Nm,
    value,
  ]);
const byHand = [
  [1000, 50, 0.8],
  [1000, 100, 0.9],
  [2000, 50, 0.85],
  [2000, 100, 0.95],
];

describe("a table", () => {
  it("has speed down or across, as its words say", () => {
    expect(cellsOf("rpm \\ Nm,50,100", "1000,0.8,0.9", "2000,0.85,0.95")).toEqual(byHand);
    const across = cellsOf("Nm \\ rpm,1000,2000", "50,0.8,0.85", "100,0.9,0.95");
    expect([...across].sort(([a, b], [c, d]) => a - c || b - d)).toEqual(byHand);
  });
  it("has speed along the axis of larger numbers where no word says", () => {
    expect(cellsOf(",50,100", "1000,0.8,0.9", "2000,0.85,0.95")).toEqual(byHand);
  });
  it("may have remarks above it and gaps in it, and commas of decimals", () => {
    const lines = ["made up", "rpm/Nm;50;100", "1000;0,8;0,9", "2000;n/a;0,95"];
    expect(cellsOf(...lines)).toEqual(byHand.filter(([, , value]) => value !== 0.85));
  });
});

it("a long table has a column for each, in any order", () => {
  const lines = ["torque (Nm),efficiency,speed (rpm)", "50,0.8,1000", "100,0.9,1000", "50,0.85,2000", "100,0.95,2000"];
  expect(cellsOf(...lines)).toEqual(byHand);
});

describe("is refused, with the place", () => {
  const refused =
    (...lines: readonly string[]) =>
    () =>
      readMotorMapCells("map.csv", lines.join("\n"));
  it("where it is empty or no table", () => {
    expect(refused("")).toThrow(/^map\.csv: found no line/);
    expect(refused("only words", "and more")).toThrow(/^map\.csv: found no table/);
  });
  it("where a cell is a word or wild", () => {
    expect(refused("rpm\\Nm,50,100", "1000,good,0.9")).toThrow(/^map\.csv line 2: found good, wanted a number/);
    expect(refused("rpm\\Nm,50,100", "1000,0.8,2e9")).toThrow(/^map\.csv line 2: found 2000000000, at most 1e\+9/);
  });
  it("where a long row has no speed", () => {
    expect(refused("speed (rpm),torque (Nm),efficiency", "x,50,0.8")).toThrow(/^map\.csv line 2: found x 50 0\.8/);
  });
});

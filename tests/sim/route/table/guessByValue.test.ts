import { expect, it } from "vitest";
import { guessByValue } from "../../../../sim/route/table/guessByValue.ts";
import { columnsOf, tenRows } from "./layoutOf.ts";

function guessed(row: (i: number) => string) {
  const { layout, columns, roles } = columnsOf(...tenRows(row));
  guessByValue(layout, columns, roles);
  return columns.map((column) => roles.of(column)?.role ?? roles.whyLeft(column));
}
const north = (i: number) => (50 + i * 2e-4).toFixed(6);
const slow = [30, 32, 31, 35, 36, 34, 33, 38, 40, 39];

it("knows a clock, two angles, a speed and a height by what they look like", () => {
  expect(guessed((i) => `08:12:0${i},${north(i)},8.500000,${slow[i]},${410 + (i % 3)}.5`)).toEqual([
    "time",
    "lat",
    "lon",
    "speed",
    "height",
  ]);
});

it("knows the latitude as the one that stays below 90", () => {
  expect(guessed((i) => `08:12:0${i},150.${i}00000,-35.${i}00000,${slow[i]}`).slice(0, 3)).toEqual([
    "time",
    "lon",
    "lat",
  ]);
});

it("takes numbers that rise steadily as time, but none that only count the rows", () => {
  expect(guessed((i) => `${(0.4 * i).toFixed(1)},${slow[i]}`)).toEqual(["time", "speed"]);
  expect(guessed((i) => `${i + 1},${slow[i]}`)).toEqual([
    "counts by one from row to row: a row number or seconds",
    "speed",
  ]);
});

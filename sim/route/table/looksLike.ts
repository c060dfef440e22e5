import { readAngle } from "./readAngle.ts";
import type { SampleColumn } from "./sampleColumns.ts";

/** Nine in ten numbers are larger than the one before. */
export function risesSteadily(numbers: readonly number[]): boolean {
  let rising = 0;
  for (let i = 1; i < numbers.length; i++) {
    rising += numbers[i] > numbers[i - 1] ? 1 : 0;
  }
  return numbers.length > 2 && rising >= 0.9 * (numbers.length - 1);
}

/** A clock that stands still through the sample (a receiver's before its lock) is of no use. */
export function moves(cells: readonly string[]): boolean {
  return cells.length < 3 || new Set(cells).size > 1;
}

/** Whole numbers, each one more than the one before. */
export function countsRows(numbers: readonly number[]): boolean {
  return numbers.every((value, i) => Number.isInteger(value) && (i === 0 || value === numbers[i - 1] + 1));
}

/** Four or more decimals, within 180 degrees (or, as degrees and minutes, 18060), that hardly move: a latitude or longitude. */
export function looksLikeAngle(column: SampleColumn): boolean {
  const decimals = column.cells.filter((cell) => /[.,]\d{4,}\s*[NSEW]?$/i.test(cell.trim())).length;
  const range = spread(column.numbers);
  const isLettered = column.cells.some((cell) => /[NSEW]/i.test(cell) && readAngle(cell, "degrees", ".", 1e5));
  const isNear = column.numbers.length > 0 && range < 5 && column.numbers.every((value) => Math.abs(value) <= 180);
  const isMinutes =
    column.numbers.length > 0 && range < 500 && column.numbers.every((value) => Math.abs(value) < 18060);
  return decimals >= 0.7 * column.cells.length && (isNear || isMinutes || isLettered);
}

/** Mostly numbers, from 0 to 250, that go up and down. */
export function looksLikeSpeed(column: SampleColumn): boolean {
  return (
    column.numbers.length > 0.5 * column.cells.length &&
    column.numbers.every((value) => value >= 0 && value <= 250) &&
    spread(column.numbers) > 2 &&
    !risesSteadily(column.numbers)
  );
}

/** Mostly numbers, from the lowest to the highest roads in metres, none 60 from the one before. */
export function looksLikeHeight(column: SampleColumn): boolean {
  let largest = 0;
  for (let i = 1; i < column.numbers.length; i++) {
    largest = Math.max(largest, Math.abs(column.numbers[i] - column.numbers[i - 1]));
  }
  return (
    column.numbers.length > 0.5 * column.cells.length &&
    column.numbers.every((value) => value >= -450 && value <= 6000) &&
    spread(column.numbers) > 0 &&
    !countsRows(column.numbers) &&
    largest < 60
  );
}

function spread(numbers: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of numbers) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return numbers.length > 0 ? most - least : 0;
}

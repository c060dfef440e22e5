import { expect, it } from "vitest";
import { considerCovariance } from "../../../sim/math/considerCovariance.ts";

const column = (...values: number[]) => Float64Array.from(values);

it("moves a mean of two by half of what one of them is off, and adds the square of that to its variance", () => {
  // x from two measurements of it, the first of which has an offset nobody fitted, known to 3: variance 1/2, and 3²/4 more.
  const { whole, moves } = considerCovariance([column(1, 1)], column(0.5), [{ slope: column(1, 0), spread: 3 }]);
  expect(moves).toEqual([[-0.5]]);
  expect(whole[0]).toBe(0.5 + 9 / 4);
});

it("makes two values hang on each other through a third", () => {
  const slopes = [column(1, 0, 0), column(0, 1, 0)];
  const { whole, moves } = considerCovariance(slopes, column(1, 0, 0, 1), [{ slope: column(2, 1, 5), spread: 0.5 }]);
  expect(moves).toEqual([[-2, -1]]);
  expect([...whole]).toEqual([1 + 1, 0.5, 0.5, 1 + 0.25]);
});

it("adds to a covariance of one's own, but moves by that of the fit", () => {
  const { whole, moves } = considerCovariance(
    [column(2)],
    column(0.25),
    [
      { slope: column(1), spread: 1 },
      { slope: column(-2), spread: 2 },
    ],
    column(10),
  );
  expect(moves).toEqual([[-0.5], [1]]);
  expect(whole[0]).toBe(10 + 0.25 + 4);
});

it("is what was fitted where nothing was left out", () => {
  const { whole, moves } = considerCovariance([column(1)], column(1), []);
  expect(moves).toEqual([]);
  expect([...whole]).toEqual([1]);
});

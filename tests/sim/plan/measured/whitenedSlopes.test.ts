import { expect, it } from "vitest";
import { whitenedSlopes } from "../../../../sim/plan/measured/whitenedSlopes.ts";

const parameter = (before: number) => ({ id: "drag" as const, start: 1, before, low: 0, high: 2 });

it("divides slopes by how far each energy may be off, and has a row for what was known of each value before", () => {
  // L = [[2, 0], [1, 4]]: the second has half the first's error in it.
  const lower = Float64Array.of(2, 0, 1, 4);
  const slopes_J = [Float64Array.of(4, 10), Float64Array.of(6, 3)];
  const { jacobian, columns } = whitenedSlopes(slopes_J, [parameter(0.5), parameter(0.25)], lower);
  expect(columns.map((each) => [...each])).toEqual([
    [2, 2],
    [3, 0],
  ]);
  expect([...jacobian]).toEqual([2, 3, 2, 0, 2, 0, 0, 4]);
  expect(slopes_J.map((each) => [...each])).toEqual([
    [4, 10],
    [6, 3],
  ]);
});

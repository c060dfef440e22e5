import { expect, it } from "vitest";
import { thinDots } from "../../../../../web/charts/parts/lines/thinDots.ts";

it("keeps the first dot of each square", () => {
  const x = [0, 0.5, 1.2, 1.9, 0.1];
  const y = [0, 0.9, 0, 0, 1.1];
  expect(thinDots(x, y, 5, 1)).toEqual([0, 2, 4]);
  expect(thinDots(x, y, 5, 100)).toEqual([0]);
  expect(thinDots(x, y, 0, 1)).toEqual([]);
});

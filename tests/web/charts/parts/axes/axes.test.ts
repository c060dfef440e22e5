import { expect, it } from "vitest";
import { ticksFor } from "../../../../../web/charts/parts/axes/axes.ts";

it("has room for a number each 62 pixels, at least two and at most ten", () => {
  expect([0, 123, 186, 247, 248, 620, 2000].map(ticksFor)).toEqual([2, 2, 3, 3, 4, 10, 10]);
});

import { expect, it } from "vitest";
import { bounded, fixBounds } from "../../../../sim/route/log/fixBounds.ts";

it("is the value within its bounds, ends included, and no value beyond them or where there is none", () => {
  expect(bounded(90, fixBounds.latitude_deg)).toBe(90);
  expect(bounded(-500, fixBounds.elevation_m)).toBe(-500);
  for (const none of [90.1, -91, null, Number.NaN]) expect(bounded(none, fixBounds.latitude_deg)).toBeNaN();
});

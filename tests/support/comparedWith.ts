import { expect } from "vitest";
import { noteForMeter } from "./noteForMeter.ts";

/**
 * Claims that a figure of ours is one from outside, to within a tolerance that has its reason beside the call, and notes the
 * error for `npm run meter`. Compared as a difference where `within` is given (in the quantity's unit: printed digits), as a
 * share of the expected figure where `withinShare_frac` is (truncation, rounding).
 */
export function comparedWith(
  quantity: string,
  found: number,
  expected: number,
  tolerance: { readonly within: number } | { readonly withinShare_frac: number },
): void {
  const isShare = "withinShare_frac" in tolerance;
  const error = isShare ? Math.abs(found / expected - 1) : Math.abs(found - expected);
  const allowed = isShare ? tolerance.withinShare_frac : tolerance.within;
  const name = isShare ? `${quantity}, as a share` : quantity;
  noteForMeter({ quantity: name, error, tolerance: allowed });
  const told = `${name}: found ${found}, ${expected} is printed, they may differ by ${allowed}`;
  // A printed figure and ours may differ by half a digit exactly; a double's own rounding is no error of either.
  expect(error, told).toBeLessThanOrEqual(allowed + 4 * Number.EPSILON * (isShare ? 1 : Math.abs(expected)));
}

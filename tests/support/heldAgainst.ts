import { appendFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";

/** One comparison with a figure from outside, as the meter reads it. */
export interface Comparison {
  /** What is compared, with its unit in brackets: `distance (mi)`. The meter puts equal ones together. */
  readonly quantity: string;
  readonly error: number;
  readonly tolerance: number;
}

/**
 * Claims that a figure of ours is one from outside, to within a tolerance that has its reason beside the call, and notes the
 * error for `npm run meter`. Compared as a difference where `within` is given (in the quantity's unit: printed digits), as a
 * share of the expected figure where `withinShare_frac` is (truncation, rounding).
 */
export function heldAgainst(
  quantity: string,
  found: number,
  expected: number,
  tolerance: { readonly within: number } | { readonly withinShare_frac: number },
): void {
  const isShare = "withinShare_frac" in tolerance;
  const error = isShare ? Math.abs(found / expected - 1) : Math.abs(found - expected);
  const allowed = isShare ? tolerance.withinShare_frac : tolerance.within;
  const name = isShare ? `${quantity}, as a share` : quantity;
  const folder = process.env["METER_FOLDER"];
  if (folder) {
    const comparison: Comparison = { quantity: name, error, tolerance: allowed };
    appendFileSync(join(folder, `${process.pid}.jsonl`), `${JSON.stringify(comparison)}\n`);
  }
  const told = `${name}: found ${found}, ${expected} is printed, they may differ by ${allowed}`;
  // A printed figure and ours may differ by half a digit exactly; a double's own rounding is no error of either.
  expect(error, told).toBeLessThanOrEqual(allowed + 4 * Number.EPSILON * (isShare ? 1 : Math.abs(expected)));
}

import { monotoneCubic } from "./monotoneCubic.ts";

/** A function of one variable at evenly spaced points, straight lines between: what a hot loop can look up in a few ns. */
export interface UniformTable {
  readonly low: number;
  readonly perUnit: number;
  /** One value a point; the last stands twice, so that the upper end needs no branch. */
  readonly values: Float64Array;
}

/** The monotone cubic through (x, y), laid on `intervals` equal intervals from the first x to the last. */
export function uniformTable(x: readonly number[], y: readonly number[], intervals: number): UniformTable {
  const low = x[0];
  const width = (x[x.length - 1] - low) / intervals;
  const at = Float64Array.from({ length: intervals + 1 }, (_, i) => low + i * width);
  at[intervals] = x[x.length - 1];
  const values = new Float64Array(intervals + 2);
  values.set(monotoneCubic(x, y, at));
  values[intervals + 1] = values[intervals];
  return { low, perUnit: 1 / width, values };
}

/** The table's value at x, and beyond its ends the end values. */
export function lookUp({ low, perUnit, values }: UniformTable, x: number): number {
  const place = (x - low) * perUnit;
  if (place <= 0) return values[0];
  if (place >= values.length - 2) return values[values.length - 2];
  const i = Math.trunc(place);
  return values[i] + (place - i) * (values[i + 1] - values[i]);
}

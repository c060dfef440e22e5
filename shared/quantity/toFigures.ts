/**
 * A size rounded to so many significant figures, as a number. A unit is chosen by the size as it will be written: what rounds up to the limit of
 * a unit belongs to the unit above it (59.7 min are 1 h, 9999 m are 10 km), or the same size would be written in two ways.
 */
export function toFigures(size: number, digits: number): number {
  return Number(size.toPrecision(digits));
}

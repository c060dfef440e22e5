import { type LineOptions, line, type Markish } from "@observablehq/plot";

/**
 * What lies between two heights over the same rows, filled: a line there and back. Plot's own mark for this can bin and stack
 * too, and brings both into the page's script, which never asks for them.
 */
export function filledBetween<Row>(
  rows: readonly Row[],
  x: (row: Row) => number,
  low: (row: Row) => number,
  high: (row: Row) => number,
  style: Pick<LineOptions, "fill" | "fillOpacity" | "stroke" | "strokeWidth">,
): Markish {
  const there = rows.map((row) => [x(row), high(row)] as const);
  const back = rows.toReversed().map((row) => [x(row), low(row)] as const);
  return line([...there, ...back, ...there.slice(0, 1)], {
    x: ([at]) => at,
    y: ([, value]) => value,
    stroke: "none",
    ...style,
  });
}

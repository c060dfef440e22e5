/**
 * The rows of a column as numbers of their own, `shown` each: Plot takes these as they are, and copies anything else value by
 * value for every mark.
 */
export function drawnColumn(
  rows: readonly number[],
  column: ArrayLike<number>,
  shown: (value: number) => number = (value) => value,
): Float64Array {
  return Float64Array.from(rows, (row) => shown(column[row] as number));
}

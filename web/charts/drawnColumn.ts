/**
 * The rows of a column as numbers of their own, `shown` each: Plot takes these as they are, and copies anything else value by
 * value for every mark.
 */
export function drawnColumn(
  rows: readonly number[],
  column: ArrayLike<number>,
  shown?: (value: number) => number,
): Float64Array {
  const drawn = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const value = column[rows[i] as number] as number;
    drawn[i] = shown ? shown(value) : value;
  }
  return drawn;
}

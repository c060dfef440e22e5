/** The rows of a column as they are drawn, `shown` each. */
export function drawnColumn(
  rows: readonly number[],
  column: ArrayLike<number>,
  shown: (value: number) => number,
): Float64Array {
  const drawn = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) drawn[i] = shown(column[rows[i] as number] as number);
  return drawn;
}

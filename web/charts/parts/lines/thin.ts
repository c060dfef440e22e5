/**
 * Row indices, rising, that draw a line over `x` no differently from all of them: in each of `columns` equal parts of the
 * x range the first, lowest, highest and last row. `x` never falls. At most 4 rows a column; all rows where there are few.
 */
export function thin(x: ArrayLike<number>, y: ArrayLike<number>, length: number, columns: number): number[] {
  const kept: number[] = [];
  if (length <= 4 * columns) {
    for (let i = 0; i < length; i++) kept.push(i);
    return kept;
  }
  const from = x[0] as number;
  const perColumn = columns / ((x[length - 1] as number) - from || 1);
  for (let first = 0; first < length; ) {
    const column = Math.floor(((x[first] as number) - from) * perColumn);
    let lowest = first;
    let highest = first;
    let next = first + 1;
    while (next < length && Math.floor(((x[next] as number) - from) * perColumn) === column) {
      // Written so that a gap (NaN) gives way to any number.
      if (!((y[next] as number) >= (y[lowest] as number))) lowest = next;
      if (!((y[next] as number) <= (y[highest] as number))) highest = next;
      next++;
    }
    const four = [first, lowest, highest, next - 1].sort((a, b) => a - b);
    for (const row of four) if (row !== kept.at(-1)) kept.push(row);
    first = next;
  }
  return kept;
}

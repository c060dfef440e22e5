/** How many rows of a column from `first` to `last` (not included) have a value: NaN is "not recorded". */
export function countValues(column: Float64Array, first = 0, last = column.length): number {
  let count = 0;
  for (let i = first; i < last; i++) {
    count += Number.isNaN(column[i]) ? 0 : 1;
  }
  return count;
}

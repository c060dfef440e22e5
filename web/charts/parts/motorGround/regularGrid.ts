/** Values at the middles of equal fields: rows upward along y, columns along x. */
export interface RegularGrid {
  readonly values: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
  readonly low: number;
  readonly high: number;
}

/**
 * A table over uneven, rising axes (row-major, rows along `y`) laid onto equal fields, straight between its nodes in both
 * directions, as contours are drawn from equal fields only. Both axes need two nodes.
 */
export function regularGrid(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  table: ArrayLike<number>,
  columns: number,
  rows: number,
): RegularGrid {
  const x1 = x[0] as number;
  const x2 = x[x.length - 1] as number;
  const y1 = y[0] as number;
  const y2 = y[y.length - 1] as number;
  const values = new Float64Array(columns * rows);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < rows; row++) {
    const [below, up] = nodeBelow(y, y1 + ((row + 0.5) / rows) * (y2 - y1));
    for (let column = 0; column < columns; column++) {
      const [left, along] = nodeBelow(x, x1 + ((column + 0.5) / columns) * (x2 - x1));
      const corner = below * x.length + left;
      const lower = mix(table[corner] as number, table[corner + 1] as number, along);
      const upper = mix(table[corner + x.length] as number, table[corner + x.length + 1] as number, along);
      const value = mix(lower, upper, up);
      values[row * columns + column] = value;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return { values, columns, rows, x1, x2, y1, y2, low, high };
}

/** Index of the node at or below `at` with one after it, and how far `at` is from it to the next. */
function nodeBelow(axis: ArrayLike<number>, at: number): [number, number] {
  let i = 0;
  while (i < axis.length - 2 && (axis[i + 1] as number) <= at) i++;
  const from = axis[i] as number;
  const length = (axis[i + 1] as number) - from;
  return [i, length > 0 ? (at - from) / length : 0];
}

function mix(a: number, b: number, share: number): number {
  return a + (b - a) * share;
}

import { type Axis, createAxis, intervalOf } from "./axis.ts";

/** A function of two variables on a rectangular grid of nodes, each cell kept as the four coefficients of its surface. */
export interface RectangularTable {
  readonly x: Axis;
  readonly y: Axis;
  /** Four a cell, cells row by row along y: value = c0 + c1 dx + c2 dy + c3 dx dy from the cell's lower corner. */
  readonly coefficients: Float64Array;
}

/** The table through `rows[i][j]` at (x[i], y[j]); both axes rise strictly and have at least two nodes. */
export function rectangularTable(
  x: readonly number[],
  y: readonly number[],
  rows: readonly (readonly number[])[],
): RectangularTable {
  const across = y.length - 1;
  const coefficients = new Float64Array(4 * (x.length - 1) * across);
  for (let i = 0; i < x.length - 1; i++) {
    for (let j = 0; j < across; j++) {
      const width = x[i + 1] - x[i];
      const height = y[j + 1] - y[j];
      const at = 4 * (i * across + j);
      coefficients[at] = rows[i][j];
      coefficients[at + 1] = (rows[i + 1][j] - rows[i][j]) / width;
      coefficients[at + 2] = (rows[i][j + 1] - rows[i][j]) / height;
      coefficients[at + 3] = (rows[i + 1][j + 1] - rows[i + 1][j] - rows[i][j + 1] + rows[i][j]) / (width * height);
    }
  }
  return { x: createAxis(x), y: createAxis(y), coefficients };
}

/** The surface at (x, y): bilinear in its cell; beyond the grid the nearest cell's surface goes on. */
export function bilinear(table: RectangularTable, x: number, y: number): number {
  const i = intervalOf(table.x, x);
  const j = intervalOf(table.y, y);
  const dx = x - table.x.nodes[i];
  const dy = y - table.y.nodes[j];
  const at = 4 * (i * (table.y.nodes.length - 1) + j);
  const c = table.coefficients;
  return c[at] + dx * c[at + 1] + dy * (c[at + 2] + dx * c[at + 3]);
}

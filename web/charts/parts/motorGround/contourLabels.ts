import type { RegularGrid } from "./regularGrid.ts";

export interface ContourLabel {
  readonly level: number;
  /** Middle, in pixels. */
  readonly x: number;
  readonly y: number;
}

/**
 * A place on each contour for its number: where it crosses a column of the grid in the half of positive y, as far to the right as
 * `isInside` allows and clear of the numbers placed before it; of one that runs straight up, and so crosses no column, where it crosses
 * a row, from four fifths of the height down. No number reaches over the grid's sides. A contour with no such place goes without.
 */
export function contourLabels(
  grid: RegularGrid,
  levels: readonly number[],
  pixel: { x(x: number): number; y(y: number): number; width(level: number): number },
  isInside: (x: number, y: number) => boolean,
): ContourLabel[] {
  const { columns, rows, values } = grid;
  const xAt = (column: number) => grid.x1 + ((column + 0.5) / columns) * (grid.x2 - grid.x1);
  const yAt = (row: number) => grid.y1 + ((row + 0.5) / rows) * (grid.y2 - grid.y1);
  const placed: (ContourLabel & { readonly half: number })[] = [];
  for (const level of levels) {
    const half = pixel.width(level) / 2 + 3;
    const found = firstPlace(level, half);
    if (found) placed.push(found);
  }
  return placed.map(({ level, x, y }) => ({ level, x, y }));

  function firstPlace(level: number, half: number): (ContourLabel & { half: number }) | undefined {
    for (const [x, y] of crossings(level)) {
      if (!isInside(x, y)) continue;
      const at = { level, x: pixel.x(x), y: pixel.y(y), half };
      if (at.x - half < pixel.x(grid.x1) || at.x + half > pixel.x(grid.x2)) continue;
      if (placed.every((other) => Math.abs(other.y - at.y) > 14 || Math.abs(other.x - at.x) > other.half + half))
        return at;
    }
    return undefined;
  }

  function* crossings(level: number): Generator<readonly [x: number, y: number]> {
    for (let column = Math.floor(columns * 0.8); column > 2; column--) {
      for (let row = 0; row + 1 < rows; row++) {
        if (yAt(row) < 0) continue;
        const share = crossing(row * columns + column, (row + 1) * columns + column, level);
        if (share !== undefined) yield [xAt(column), yAt(row) + share * (yAt(row + 1) - yAt(row))];
      }
    }
    for (let row = Math.floor(rows * 0.8); row >= 0 && yAt(row) >= 0; row--) {
      for (let column = 0; column + 1 < columns; column++) {
        const share = crossing(row * columns + column, row * columns + column + 1, level);
        if (share !== undefined) yield [xAt(column) + share * (xAt(column + 1) - xAt(column)), yAt(row)];
      }
    }
  }

  /** Where between two neighbours a level lies, as a share of the way. */
  function crossing(from: number, to: number, level: number): number | undefined {
    const [below, above] = [values[from] as number, values[to] as number];
    if (below === above || (below - level) * (above - level) > 0) return undefined;
    return (level - below) / (above - below);
  }
}

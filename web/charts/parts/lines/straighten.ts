/** Pixels that a line may be drawn off its place without anybody seeing it. */
export const UNSEEN_px = 0.25;

/**
 * Those of `rows` whose line over `x` stays within `tolerance` of the line through them all, measured along y: a row that lies
 * on the straight line between its neighbours is not drawn. The first, the last and the edges of gaps (NaN) stay; `x` never
 * falls. From each kept row the lines that pass all rows since within the tolerance form a cone; the row before the first that
 * lies outside is kept.
 */
export function straighten(
  rows: readonly number[],
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  tolerance: number,
): number[] {
  const kept: number[] = [];
  let anchor = Number.NaN; // row the cone starts from; NaN after a gap
  let last = Number.NaN; // row before, not kept yet
  let lowest = Number.NEGATIVE_INFINITY;
  let highest = Number.POSITIVE_INFINITY;
  const start = (row: number) => {
    anchor = row;
    lowest = Number.NEGATIVE_INFINITY;
    highest = Number.POSITIVE_INFINITY;
  };
  const keepLast = () => {
    if (last !== kept.at(-1) && !Number.isNaN(last)) kept.push(last);
  };
  for (const row of rows) {
    const here = y[row] as number;
    if (Number.isNaN(here) || Number.isNaN(anchor)) {
      keepLast();
      kept.push(row);
      start(Number.isNaN(here) ? Number.NaN : row);
      last = row;
      continue;
    }
    let run = (x[row] as number) - (x[anchor] as number);
    let rise = here - (y[anchor] as number);
    if (run > 0 ? rise < lowest * run || rise > highest * run : Math.abs(rise) > tolerance) {
      keepLast();
      start(last);
      run = (x[row] as number) - (x[anchor] as number);
      rise = here - (y[anchor] as number);
    }
    if (run === 0 && Math.abs(rise) > tolerance) {
      kept.push(row); // a jump at one place
      start(row);
    } else if (run > 0) {
      lowest = Math.max(lowest, (rise - tolerance) / run);
      highest = Math.min(highest, (rise + tolerance) / run);
    }
    last = row;
  }
  keepLast();
  return kept;
}

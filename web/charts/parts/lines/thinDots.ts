/**
 * Indices of the dots that a reader can tell apart: of all that fall into one square of `cell_px` only the first. Places in
 * pixels.
 */
export function thinDots(x: ArrayLike<number>, y: ArrayLike<number>, length: number, cell_px: number): number[] {
  const seen = new Set<number>();
  const kept: number[] = [];
  for (let i = 0; i < length; i++) {
    // 65,536 columns of cells are more than any screen has.
    const cell = Math.floor((y[i] as number) / cell_px) * 65_536 + Math.floor((x[i] as number) / cell_px);
    if (seen.has(cell)) continue;
    seen.add(cell);
    kept.push(i);
  }
  return kept;
}

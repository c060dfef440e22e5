/** The share of full that is left at x between where none is left and where all is; a jump at `none` where the two meet. */
export function share(x: number, none: number, full: number): number {
  if (x <= none) return 0;
  if (x >= full) return 1;
  return (x - none) / (full - none);
}

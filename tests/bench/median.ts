/** The middle one of some figures, or the mean of the two in the middle. */
export function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)] : 0.5 * (sorted[half - 1] + sorted[half]);
}

/**
 * Where to put labels that want to be at `wanted` (pixels along one direction) and take `size` each, so that none
 * overlaps another and all lie between `from` and `to`: as near to their places as that allows, order kept. Centres come
 * back in the order given. Where there is not room for all, they overlap evenly.
 */
export function spread(wanted: readonly number[], size: readonly number[], from: number, to: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => at(wanted, a) - at(wanted, b) || a - b);
  const total = size.reduce((sum, each) => sum + each, 0);
  const squeeze = total > to - from ? (to - from) / total : 1;
  const centre = [...wanted];
  let edge = from;
  for (const i of order) {
    const half = (at(size, i) * squeeze) / 2;
    centre[i] = Math.max(at(wanted, i), edge + half);
    edge = at(centre, i) + half;
  }
  // Pushed past the end, they come back; what comes back is then shared out evenly within a touching group.
  edge = to;
  for (const i of order.toReversed()) {
    const half = (at(size, i) * squeeze) / 2;
    centre[i] = Math.min(at(centre, i), edge - half);
    edge = at(centre, i) - half;
  }
  return centre;
}

function at(values: readonly number[], i: number): number {
  return values[i] ?? 0;
}

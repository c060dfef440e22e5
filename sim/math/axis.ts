/** A rising list of table nodes with an even grid of starting guesses laid over it, for finding intervals fast. */
export interface Axis {
  readonly nodes: Float64Array;
  readonly bucketsPerUnit: number;
  /** For each bucket, the last interval that begins at or before it. */
  readonly starts: Uint16Array;
}

const BUCKETS = 128;

/** An axis over nodes that rise strictly; at least two. */
export function createAxis(nodes: readonly number[]): Axis {
  const first = nodes[0];
  const span = nodes[nodes.length - 1] - first;
  const starts = new Uint16Array(BUCKETS + 1);
  let i = 0;
  for (let bucket = 0; bucket <= BUCKETS; bucket++) {
    const at = first + (bucket * span) / BUCKETS;
    while (i < nodes.length - 2 && nodes[i + 1] <= at) i++;
    starts[bucket] = i;
  }
  return { nodes: Float64Array.from(nodes), bucketsPerUnit: BUCKETS / span, starts };
}

/** The interval that x lies in, from 0; below the first node the first, beyond the last node the last. */
export function intervalOf(axis: Axis, x: number): number {
  const { nodes, starts } = axis;
  const bucket = (x - nodes[0]) * axis.bucketsPerUnit;
  let i = starts[bucket <= 0 ? 0 : bucket >= BUCKETS ? BUCKETS : Math.trunc(bucket)];
  while (i < nodes.length - 2 && nodes[i + 1] <= x) i++;
  return i;
}

import type { Timeline } from "../rows/timeline.ts";
import type { SmoothedPositions } from "./smoothPositions.ts";

/** Speeds at every moment, straight between those there are (NaN elsewhere). */
export function interpolated(time_s: Float64Array, sparse: Float64Array): Float64Array {
  const n = sparse.length;
  const full = new Float64Array(n);
  let last = -1;
  for (let k = 0; k <= n; k++) {
    if (k < n && Number.isNaN(sparse[k])) {
      continue;
    }
    for (let j = last + 1; j < k; j++) {
      const a = last >= 0 ? sparse[last] : k < n ? sparse[k] : 0;
      const b = k < n ? sparse[k] : a;
      const share = last >= 0 && k < n ? (time_s[j] - time_s[last]) / (time_s[k] - time_s[last]) : 0;
      full[j] = a + (b - a) * share;
    }
    if (k < n) {
      full[k] = sparse[k];
    }
    last = k;
  }
  return full;
}

/** Speed from one position straight to the next, for those who turn the smoothing off. */
export function rawFromPositions(
  line: Timeline,
  positions: Pick<SmoothedPositions, "east_m" | "north_m">,
): Float64Array {
  const sparse = new Float64Array(line.count).fill(Number.NaN);
  let last = -1;
  for (let k = 0; k < line.count; k++) {
    if (Number.isNaN(positions.east_m[k])) {
      continue;
    }
    if (last >= 0) {
      const leg_m = Math.hypot(
        positions.east_m[k] - positions.east_m[last],
        positions.north_m[k] - positions.north_m[last],
      );
      sparse[k] = leg_m / (line.time_s[k] - line.time_s[last]);
    }
    last = k;
  }
  return interpolated(line.time_s, sparse);
}

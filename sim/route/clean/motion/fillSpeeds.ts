import type { Timeline } from "../rows/timeline.ts";
import type { SmoothedPositions } from "./smoothPositions.ts";

/** Speed from positions stands in where a log with speeds has none for this long. */
const SILENT_s = 5;
/** Recorded speeds, and where there has been none for seconds, those from positions. */
export function filledIn(
  line: Timeline,
  recorded_mps: Float64Array,
  fromPositions: Float64Array | undefined,
): Float64Array {
  if (!fromPositions) {
    return recorded_mps;
  }
  const filled = Float64Array.from(recorded_mps);
  let last = -1;
  for (let k = 0; k <= line.count; k++) {
    const isEnd = k === line.count;
    if (!isEnd && Number.isNaN(recorded_mps[k])) {
      continue;
    }
    const from_s = last < 0 ? Number.NEGATIVE_INFINITY : line.time_s[last];
    const to_s = isEnd ? Number.POSITIVE_INFINITY : line.time_s[k];
    if (to_s - from_s > 2 * SILENT_s) {
      for (let j = last + 1; j < k; j++) {
        if (line.time_s[j] - from_s >= SILENT_s && to_s - line.time_s[j] >= SILENT_s) {
          filled[j] = fromPositions[j];
        }
      }
    }
    last = k;
  }
  return filled;
}

/** Recorded speeds hold until the next one, so that moments between two slow ones count as slow. */
export function forStanding(source: Float64Array, isRecorded: boolean): Float64Array {
  if (!isRecorded) {
    return source;
  }
  const held = Float64Array.from(source);
  let next = Number.POSITIVE_INFINITY;
  let last = Number.POSITIVE_INFINITY;
  const after = new Float64Array(source.length);
  for (let k = source.length - 1; k >= 0; k--) {
    next = Number.isNaN(source[k]) ? next : source[k];
    after[k] = next;
  }
  for (let k = 0; k < source.length; k++) {
    last = Number.isNaN(source[k]) ? last : source[k];
    const before = Number.isFinite(last) ? last : after[k];
    const behind = Number.isFinite(after[k]) ? after[k] : before;
    held[k] = Math.max(before, behind);
  }
  return held;
}

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

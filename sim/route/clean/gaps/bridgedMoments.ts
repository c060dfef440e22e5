import type { RowColumns } from "../rows/rowColumns.ts";
import type { Timeline } from "../rows/timeline.ts";
import type { Segment } from "./findGaps.ts";

/**
 * Moments strictly inside bridged gaps, 1 each: those driven over and those parked through. A fix between two parkings is parked too: a
 * logger that sleeps wakes up now and then.
 */
export function bridgedMoments(
  rows: RowColumns,
  segment: Segment,
  line: Timeline,
): { parked: Uint8Array; driven: Uint8Array } {
  const parked = new Uint8Array(line.count);
  const driven = new Uint8Array(line.count);
  let k = 0;
  for (const [g, gap] of segment.bridges.entries()) {
    const next = segment.bridges[g + 1];
    const goesOn = gap.kind === "parked" && next?.kind === "parked" && next.from === gap.from + 1;
    const [from_s, to_s] = [rows.time_s[gap.from], rows.time_s[gap.from + 1]];
    while (k < line.count && line.time_s[k] <= from_s) {
      k++;
    }
    for (; k < line.count && (line.time_s[k] < to_s || (goesOn && line.time_s[k] === to_s)); k++) {
      (gap.kind === "parked" ? parked : driven)[k] = 1;
    }
  }
  return { parked, driven };
}

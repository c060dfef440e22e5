import type { GapFindings } from "../gaps/findGaps.ts";
import { layOut } from "../rows/plane.ts";
import type { RowColumns } from "../rows/rowColumns.ts";

/** Slower than this from fix to fix it is the noise of positions that winds. Assumed. */
const MOVING_mps = 2;

/**
 * How much the road is seen to wind from fix to fix: by how much the line through every fix is longer than that through every second one, as a share.
 * Where the heading wanders by chance along the road, or turns at corners, the line falls short of the road in proportion to
 * the distance of the fixes, so that as much again lies unseen between them; of smooth bends a third of it. Noise of positions winds
 * too, by which a line is too long. Gaps do not count; 0 where nothing moves.
 */
export function circuitySeen_frac(rows: RowColumns, { segments, interval_s }: GapFindings): number {
  let [excess_m, line_m] = [0, 0];
  for (const { from, to } of segments) {
    const { east_m, north_m } = layOut(rows.latitude_deg.subarray(from, to), rows.longitude_deg.subarray(from, to));
    const leg_m = (a: number, b: number) => Math.hypot(east_m[b] - east_m[a], north_m[b] - north_m[a]);
    const isLeg = (i: number) => {
      const dt_s = rows.time_s[from + i + 1] - rows.time_s[from + i];
      return dt_s < 1.5 * interval_s && leg_m(i, i + 1) > MOVING_mps * dt_s;
    };
    for (let i = 1; i + 1 < to - from; i++) {
      if (!isLeg(i - 1) || !isLeg(i)) continue;
      const both_m = leg_m(i - 1, i) + leg_m(i, i + 1);
      excess_m += both_m - leg_m(i - 1, i + 1);
      line_m += both_m;
    }
  }
  return line_m > 0 ? excess_m / line_m : 0;
}

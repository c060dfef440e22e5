import type { CleanInput } from "../../sim/route/clean/report/cleanedLog.ts";
import { FixBuilder } from "../../sim/route/log/fixBuilder.ts";
import { emptyFix, type Fix } from "../../sim/route/log/fixes.ts";

/** Metres in a degree of latitude at 50 north, about: for laying made fixes out, not for measuring. */
const M_PER_DEG = 111229;

/** A log from the rows given, each as far as it is stated; `north_m` and `east_m` are laid out from 50 N 8 E. */
export function madeLog(
  rows: readonly (Partial<Fix> & { readonly time_s: number; readonly north_m?: number; readonly east_m?: number })[],
  hasZone = true,
): CleanInput {
  const builder = new FixBuilder();
  rows.forEach(({ north_m, east_m, ...row }, i) => {
    const placed =
      north_m === undefined
        ? {}
        : {
            latitude_deg: 50 + north_m / M_PER_DEG,
            longitude_deg: 8 + (east_m ?? 0) / (111320 * Math.cos((50 * Math.PI) / 180)),
          };
    builder.add({ ...emptyFix(i + 1, 0), ...placed, ...row });
  });
  return { file: "made", fixes: builder.finish(), hasZone };
}

/** Rows at a steady speed to the north, one a second, from a time and a place on. */
export function steadyRows(from_s: number, seconds: number, speed_mps: number, from_m = 0) {
  return Array.from({ length: seconds }, (_, i) => ({ time_s: from_s + i, north_m: from_m + i * speed_mps }));
}

import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { type DriveReport, type Profile, steepestPitch } from "../../sim/index.ts";

/** The road in a line: its name, how long it is, what it climbs, and its steepest piece. */
export function roadFact(
  title: string,
  { distance_km, climb_m }: DriveReport["trace"],
  profile: Profile | undefined,
  units: UnitHabit,
): string {
  const length = writeQuantity("distance", distance_km, units, 2);
  if (climb_m < 1) return `${title}, ${length}, level`;
  const pitch = profile && steepestPitch(profile);
  const steepest = pitch ? `, steepest 1 in ${Math.round(1 / pitch.grade_ratio)}` : "";
  return `${title}, ${length}, climbing ${writeQuantity("elevation", climb_m, units, 2)}${steepest}`;
}

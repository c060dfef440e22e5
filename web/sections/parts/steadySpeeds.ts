import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH, MPS_PER_MPH } from "../../../shared/units.ts";
import type { SteadyRow } from "../../../sim/index.ts";

const metric_kmh: readonly number[] = [30, 40, 50, 60, 70, 80, 90, 100];
const miles_kmh: readonly number[] = [20, 25, 30, 35, 40, 45, 50, 60].map((mph) => (mph * MPS_PER_MPH) / MPS_PER_KMH);

/** Speeds of the steady table as a technician checks them first: round in the units he thinks in. */
export function steadySpeeds_kmh(units: UnitHabit): readonly number[] {
  return units === "metric" ? metric_kmh : miles_kmh;
}

/** The speed at which a car's use is best known by feel: about 60 km/h. */
export function familiarSpeed_kmh(units: UnitHabit): number {
  return units === "metric" ? 60 : (35 * MPS_PER_MPH) / MPS_PER_KMH;
}

/** The row of the speed that people know best, or the next above that is held; where none is, of the fastest that is. */
export function familiarRow<Row extends Pick<SteadyRow, "speed_kmh" | "isHeld">>(
  rows: readonly Row[],
  units: UnitHabit,
): Row | undefined {
  const held = rows.filter(({ isHeld }) => isHeld);
  return held.find(({ speed_kmh }) => speed_kmh >= familiarSpeed_kmh(units)) ?? held.at(-1);
}

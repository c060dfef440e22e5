import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { type FigureUnits, METRIC, MILES } from "../charts/figureUnits.ts";

/** The units that figures are drawn in for a reader's habit. */
export function figureUnitsOf(units: UnitHabit): FigureUnits {
  return units === "metric" ? METRIC : MILES;
}

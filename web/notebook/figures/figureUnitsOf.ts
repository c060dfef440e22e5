import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { AMERICAN, BRITISH, type FigureUnits, METRIC } from "../../charts/parts/figure/figureUnits.ts";

/** The units that figures are drawn in for a reader's habit. */
export function figureUnitsOf(units: UnitHabit): FigureUnits {
  return byHabit[units];
}

const byHabit: Readonly<Record<UnitHabit, FigureUnits>> = { metric: METRIC, british: BRITISH, american: AMERICAN };

import type { Motor } from "../../../shared/job/schema/motor.ts";
import { InputError } from "../../../shared/problems.ts";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { QuantityReading } from "../../../shared/quantity/reading/reading.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { readQuantity } from "../../../shared/quantity.ts";
import { type FittedMotor, fitDatasheet } from "../../../sim/index.ts";
import { shownQuantity } from "../../fields/shownQuantity.ts";

/** The figures that a motor's datasheet prints, by the key they have in the fit. */
export const sheetFigures: Readonly<Record<string, { readonly kind: QuantityKind; readonly label: string }>> = {
  peakTorque_Nm: { kind: "torque", label: "Peak torque" },
  peakPower_kW: { kind: "power", label: "Peak power" },
  continuousPower_kW: { kind: "power", label: "Continuous power" },
  topSpeed_rpm: { kind: "rotation", label: "Top speed" },
  rated_V: { kind: "voltage", label: "Rated voltage" },
};

/** What each efficiency point says. */
export const pointFigures: Readonly<Record<string, { readonly kind: QuantityKind; readonly label: string }>> = {
  speed_rpm: { kind: "rotation", label: "Speed" },
  torque_Nm: { kind: "torque", label: "Torque" },
  efficiency_frac: { kind: "fraction", label: "Efficiency there" },
};

/** Rows of efficiency points on the form. */
export const MOST_POINTS = 6;

/** A datasheet as far as it is written down. */
export interface ReadSheet {
  /** By the key of the field, such as `points.0.torque_Nm`. */
  readonly problems: Readonly<Record<string, string>>;
  /** Figures still missing, by their labels. */
  readonly missing: readonly string[];
  /** There once nothing is missing and nothing is wrong. */
  readonly fitted?: FittedMotor;
}

/** What the texts of the form mean together, for a motor of the job's kind; a bare number has the unit shown beside its field. */
export function readDatasheet(
  texts: Readonly<Record<string, string>>,
  units: UnitHabit,
  kind: Motor["kind"],
): ReadSheet {
  const problems: Record<string, string> = {};
  const read = (key: string, quantity: QuantityKind): number | undefined => {
    const reading = readFigure(quantity, texts[key] ?? "", units);
    if (reading === undefined || (reading.ok && reading.unknown)) return undefined;
    if (reading.ok) return reading.value;
    problems[key] = reading.problem.message;
    return undefined;
  };
  const figures: Record<string, number> = {};
  const missing: string[] = [];
  for (const [key, { kind: quantity, label }] of Object.entries(sheetFigures)) {
    const value = read(key, quantity);
    if (value !== undefined) figures[key] = value;
    else if (problems[key] === undefined) missing.push(label.toLowerCase());
  }
  const rows: number[] = []; // which row of the form each point came from
  const points: { speed_rpm: number; torque_Nm: number; efficiency_frac: number }[] = [];
  for (let row = 0; row < MOST_POINTS; row++) {
    const speed_rpm = read(`points.${row}.speed_rpm`, "rotation");
    const torque_Nm = read(`points.${row}.torque_Nm`, "torque");
    const efficiency_frac = read(`points.${row}.efficiency_frac`, "fraction");
    const known = [speed_rpm, torque_Nm, efficiency_frac].filter((value) => value !== undefined).length;
    if (speed_rpm !== undefined && torque_Nm !== undefined && efficiency_frac !== undefined) {
      points.push({ speed_rpm, torque_Nm, efficiency_frac });
      rows.push(row);
    } else if (known > 0) missing.push(`the rest of efficiency point ${row + 1}`);
  }
  if (missing.length > 0 || Object.keys(problems).length > 0) return { problems, missing };
  try {
    const { peakTorque_Nm, peakPower_kW, continuousPower_kW, topSpeed_rpm, rated_V } = figures;
    const fitted = fitDatasheet({
      kind,
      peakTorque_Nm,
      peakPower_kW,
      continuousPower_kW,
      topSpeed_rpm,
      rated_V,
      points,
    });
    return { problems, missing, fitted };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    for (const { where, message } of error.problems) problems[keyOf(where, rows)] = message;
    return { problems, missing };
  }
}

/** What one text of the form means; nothing for an empty one. */
export function readFigure(kind: QuantityKind, text: string, units: UnitHabit): QuantityReading | undefined {
  if (text.trim() === "") return undefined;
  // The efficiency of a motor with its controller, at a point worth printing, is far from nothing.
  const bounds = kind === "fraction" ? { min: 0.2, max: 1 } : {};
  return readQuantity(kind, text, { ...bounds, bareUnit: shownQuantity(kind, undefined, undefined, units).unit });
}

/** The field of a fault in the fit's own words for places: `points[1].torque_Nm`. */
function keyOf(where: string, rows: readonly number[]): string {
  const point = /^points\[(\d+)\](?:\.(\w+))?$/.exec(where);
  return point ? `points.${rows[Number(point[1])]}.${point[2] ?? "torque_Nm"}` : where;
}

import { formatNumber } from "./formatNumber.ts";
import { kindInfo, type QuantityKind } from "./kinds/kinds.ts";
import { unapplyUnit } from "./kinds/unitRule.ts";
import { tidyUnit } from "./tidyText.ts";

/** The units a reader is used to. */
export type UnitHabit = "metric" | "british" | "american";

// Kinds that stay in the job file's own unit are not listed; the unit as people read it, one spelling of the kind's table.
const british: Partial<Record<QuantityKind, string>> = {
  mass: "lb",
  speed: "mph",
  length: "in",
  elevation: "ft",
  cableLength: "ft",
  distance: "miles",
  area: "ft²",
  torque: "lb ft",
  power: "bhp",
  energyUse: "Wh/mile",
  pressure: "psi",
  wheelRadius: "in",
  circumference: "in",
  fuelUse: "mpg",
  carbon: "g/mile",
  inertia: "lb ft²",
  dragLinear: "N/mph",
  dragSquare: "N/mph²",
};
const american: Partial<Record<QuantityKind, string>> = {
  ...british,
  force: "lbf",
  power: "hp",
  fuelUse: "mpg (US)",
  fuelPrice: "/gal (US)",
  temperature: "°F",
  dragLinear: "lbf/mph",
  dragSquare: "lbf/mph²",
};

/** Units that some readers are used to and the job file is not. */
export const readersUnits: readonly string[] = [...Object.values(british), ...Object.values(american)];

/**
 * A value, in the job file's unit for its kind, for a person: in the units he is used to, to so many significant figures
 * at most, with its unit, the same that figures are drawn in: pounds, never hundredweights, so that masses can be compared
 * with one another; power at a shaft in horsepower, electric power in kilowatts for everybody. A gradient is a percentage, or `1 in 6` for a Briton; a share is a percentage; a ratio is bare.
 * Not a number is written `-`.
 */
export function writeQuantity(kind: QuantityKind, value: number, units: UnitHabit, digits = 3): string {
  if (!Number.isFinite(value)) return "-";
  if (kind === "count" || kind === "money") return formatNumber(value, 12);
  if (kind === "gradient" && units === "british") return writeOneIn(value, digits);
  if (kind === "gradient" || kind === "fraction" || kind === "rate") return `${formatNumber(100 * value, digits)} %`;
  if (kind === "gearRatio" || kind === "finalDrive" || kind === "coefficient") return formatNumber(value, digits);
  const { number, unit } = inUnits(kind, value, units);
  return Number.isFinite(number) ? `${formatNumber(number, digits)} ${unit}` : "-";
}

/** A value as a number of the unit that the reader is used to, and that unit. */
export function inUnits(kind: QuantityKind, value: number, units: UnitHabit): { number: number; unit: string } {
  const info = kindInfo(kind);
  const unit = unitFor(kind, units);
  const rule = info.units[tidyUnit(unit)] ?? info.units[tidyUnit(unit).replace(/s$/, "")];
  if (unit === info.unit || rule === undefined) return { number: value, unit: info.unit };
  return { number: unapplyUnit(rule, value), unit };
}

function unitFor(kind: QuantityKind, units: UnitHabit): string {
  if (units === "metric") return kindInfo(kind).unit;
  return (units === "british" ? british : american)[kind] ?? kindInfo(kind).unit;
}

function writeOneIn(ratio: number, digits: number): string {
  const run = formatNumber(1 / Math.abs(ratio), digits);
  return Math.abs(ratio) < 1e-4 ? "level" : `1 in ${run}${ratio < 0 ? " down" : ""}`;
}

import { unitSuffixes } from "../units.ts";

// Suffixes that people write another way; pure numbers have no unit.
const written: Readonly<Record<string, string>> = {
  kmh: "km/h",
  mps2: "m/s2",
  kgm2: "kg m2",
  Npkmh: "N per km/h",
  Npkmh2: "N per (km/h)2",
  kJpK: "kJ/K",
  WpK: "W/K",
  frac: "",
  coeff: "",
  ratio: "",
};

/**
 * The unit of the value at a path, as people write it, with a space before it; nothing for a pure number. The innermost key with a
 * suffix says it: of `roads.0.speed_kmh.12` it is ` km/h`.
 */
export function unitWords(path: readonly PropertyKey[]): string {
  const name = path.findLast((key) => typeof key === "string");
  const suffix = String(name).match(/_([A-Za-z0-9]+)$/)?.[1];
  if (suffix === undefined || !unitSuffixes.includes(suffix)) return "";
  const unit = written[suffix] ?? suffix;
  return unit === "" ? "" : ` ${unit}`;
}

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
  perkWh: "a kWh",
  perh: "an hour",
  perl: "a litre",
  perday: "a day",
  l100km: "l/100 km",
  gpkWh: "g/kWh",
  frac: "",
  coeff: "",
  ratio: "",
};

/** The unit suffix of the innermost named key of a path, `kmh` of `roads.0.speed_kmh.12`; none for counts, names and choices. */
export function unitSuffixAt(path: readonly PropertyKey[]): string | undefined {
  const name = path.findLast((key) => typeof key === "string" && !/^\d+$/.test(key));
  const suffix = String(name).match(/_([A-Za-z0-9]+)$/)?.[1];
  return suffix !== undefined && unitSuffixes.includes(suffix) ? suffix : undefined;
}

/**
 * The unit of the value at a path, as people write it, with a space before it; nothing for a pure number. The innermost key with a
 * suffix says it: of `roads.0.speed_kmh.12` it is ` km/h`.
 */
export function unitWords(path: readonly PropertyKey[]): string {
  const suffix = unitSuffixAt(path);
  if (suffix === undefined) return "";
  const unit = written[suffix] ?? suffix;
  return unit === "" ? "" : ` ${unit}`;
}

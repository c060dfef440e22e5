/**
 * A number for people: three significant figures at most, no exponent, a true minus sign, thousands set apart by a thin
 * space so that no comma is taken for a decimal point. Values that are not finite are "unknown".
 */
export function threeFigures(value: number): string {
  if (!Number.isFinite(value)) return "unknown";
  return plainNumber(Number(value.toPrecision(3)));
}

/** A round number (an axis tick, a setting) written out whole, in the same manner. */
export function plainNumber(value: number): string {
  const rounded = Number(value.toPrecision(12));
  if (Math.abs(rounded) < 1e-6) return "0";
  const [whole = "0", decimals] = plainDecimal(Math.abs(rounded)).split(".");
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
  return `${rounded < 0 ? "\u2212" : ""}${grouped}${decimals ? `.${decimals}` : ""}`;
}

/** Written out, never as 1e+21. */
function plainDecimal(value: number): string {
  if (value >= 1e15) return BigInt(Math.round(value)).toString();
  return value < 1 ? value.toFixed(9).replace(/0+$/, "") : String(value);
}

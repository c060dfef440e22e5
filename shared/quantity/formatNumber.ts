import { toFigures } from "./toFigures.ts";

/**
 * A number in decimal digits, rounded to so many significant figures at most, trailing noughts dropped: 723.9 with 3
 * is `724`, 1484 is `1480`, 0.0150 is `0.015`. Below a millionth it is written with an exponent. Never `-0`.
 */
export function formatNumber(value: number, digits = 3): string {
  const rounded = toFigures(value, digits);
  if (rounded === 0) return "0";
  const size = Math.abs(rounded);
  if (size >= 1e21 || size < 1e-6) return String(rounded);
  const places = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const text = rounded.toFixed(Math.min(places, 20));
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

import { formatNumber } from "../../../shared/quantity/formatNumber.ts";

/** A distance for a sentence, to three figures: `6.4 m`, `410 m`, `12.3 km`, `5280 km`; never with a power of ten, and nothing finer than a metre. */
export function writeFar(distance_m: number): string {
  if (distance_m < 1) return "less than 1 m";
  if (distance_m < 10) return `${formatNumber(distance_m, 2)} m`;
  return distance_m >= 10_000 ? `${formatNumber(distance_m / 1000)} km` : `${formatNumber(distance_m)} m`;
}

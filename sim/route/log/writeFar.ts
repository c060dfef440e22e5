import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { toFigures } from "../../../shared/quantity/toFigures.ts";
import { M_PER_KM } from "../../../shared/units.ts";

/** From here on kilometres. */
const FAR_m = 10_000;

/** A distance for a sentence, to three figures: `6.4 m`, `410 m`, `12.3 km`, `5280 km`; never with a power of ten, and nothing finer than a metre. */
export function writeFar(distance_m: number): string {
  if (distance_m < 1) return "less than 1 m";
  if (distance_m < 10) return `${formatNumber(distance_m, 2)} m`;
  const rounded_m = toFigures(distance_m, 3);
  return rounded_m < FAR_m ? `${formatNumber(rounded_m)} m` : `${formatNumber(rounded_m / M_PER_KM)} km`;
}

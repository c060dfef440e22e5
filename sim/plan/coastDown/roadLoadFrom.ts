import { inputError } from "../../../shared/problems.ts";
import {
  type CoastBand,
  type CoastDay,
  type CoastDown,
  evaluateCoastDown,
} from "../../vehicle/coastDown/evaluateCoastDown.ts";

/**
 * Road load from the timed bands of a coast-down, by a law of 2 or 3 terms. Throws InputError at `where` for fewer bands than the law
 * has terms, and for times that no rolling car makes.
 */
export function roadLoadFrom(bands: readonly CoastBand[], day: CoastDay, terms: 2 | 3, where: string): CoastDown {
  if (bands.length < terms) {
    const wanted = `at least ${terms} are wanted, one fast and one slow, for a law of ${terms} terms`;
    throw inputError("bands-few", where, `found ${bands.length} ${bands.length === 1 ? "band" : "bands"}, ${wanted}`);
  }
  const found = evaluateCoastDown(bands, day, terms);
  if (found !== undefined && found.f0_N.value >= 0 && found.f2_Npmps2.value >= 0) return found;
  const why = "at speed a car slows faster than near rest; look for changed times, a slope, or wind";
  throw inputError(
    "bands-impossible",
    where,
    `found times that no rolling car makes (a resistance below nothing): ${why}`,
  );
}

import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { CoastBand, CoastDown } from "../../vehicle/coastDown/evaluateCoastDown.ts";

/** Of cars, from a streamlined two-seater to a tall lorry; and of tyres, from the best on a smooth road to mud tread. Assumed. */
const CAR_m2 = { low: 0.4, high: 6 };
const TYRES = { low: 0.005, high: 0.05 };
/** Runs of one band that differ by more were disturbed: wind, traffic, a slope. Assumed. */
const SPREAD_frac = 0.1;

/** What a person must know of a coast-down's result: what is in it, what is doubtful, and how sure it is. */
export function coastDownNotes(bands: readonly CoastBand[], found: CoastDown): string[] {
  const { dragArea_m2, rolling_coeff, fit } = found;
  const notes: string[] = [];
  if (
    dragArea_m2.value < CAR_m2.low ||
    dragArea_m2.value > CAR_m2.high ||
    rolling_coeff.value < TYRES.low ||
    rolling_coeff.value > TYRES.high
  ) {
    const found_m2 = `a drag area of ${n(dragArea_m2.value)} m² and a rolling coefficient of ${n(rolling_coeff.value)}`;
    notes.push(
      `${found_m2} are those of hardly any car: were the speeds mph and read as km/h, or the other way round? Is the mass right?`,
    );
  }
  const isOneWay = bands.every(({ back_s }) => back_s.length === 0);
  if (isOneWay)
    notes.push(
      "the direction of each run is not known or only one was driven: wind and slope of the road stay in the result unless both ways were driven equally often",
    );
  for (const { high_mps, low_mps, there_s, back_s } of bands) {
    for (const times of [there_s, back_s]) {
      const spread = times.length > 1 ? Math.max(...times) / Math.min(...times) - 1 : 0;
      if (spread > SPREAD_frac)
        notes.push(
          `the runs from ${n(high_mps / MPS_PER_KMH)} to ${n(low_mps / MPS_PER_KMH)} km/h differ by ${n(100 * spread, 2)} %: look for wind, traffic or a slope`,
        );
    }
  }
  if (fit.residual_s > 0)
    notes.push(`the law misses the measured times by ${n(fit.residual_s, 2)} s (root mean square)`);
  notes.push(
    "in it: tyres, wheel bearings, dragging brakes, axle and propeller shaft, as they turn in neutral; these are not counted again. Not in it: the drag at the gearbox input",
  );
  return notes;
}

import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import type { CoastBand, CoastDown } from "../../vehicle/coastDown/evaluateCoastDown.ts";

/** Of cars, from a streamlined two-seater to a tall lorry; and of tyres, from the best on a smooth road to mud tread. Assumed. */
const CAR_m2 = { low: 0.4, high: 6 };
const TYRES = { low: 0.005, high: 0.05 };
/** Runs of one band that differ by more were disturbed: wind, traffic, a slope. Assumed. */
const SPREAD_frac = 0.1;

/** What a person must know of a coast-down's result: what is in it, what is doubtful, and how sure it is. */
export function coastDownNotes(bands: readonly CoastBand[], found: CoastDown): Message[] {
  const { dragArea_m2, rolling_coeff, fit } = found;
  const notes: Message[] = [];
  if (
    dragArea_m2.value < CAR_m2.low ||
    dragArea_m2.value > CAR_m2.high ||
    rolling_coeff.value < TYRES.low ||
    rolling_coeff.value > TYRES.high
  ) {
    const figures = message`a drag area of ${q("area", dragArea_m2.value)} and a rolling coefficient of ${rolling_coeff.value}`;
    notes.push(
      message`${figures} are those of hardly any car: were the speeds mph and read as km/h, or the other way round? Is the mass right?`,
    );
  }
  const isOneWay = bands.every(({ back_s }) => back_s.length === 0);
  if (isOneWay)
    notes.push(
      message`the direction of each run is not known or only one was driven: wind and slope of the road stay in the result unless both ways were driven equally often`,
    );
  for (const { high_mps, low_mps, there_s, back_s } of bands) {
    for (const times of [there_s, back_s]) {
      const spread = times.length > 1 ? Math.max(...times) / Math.min(...times) - 1 : 0;
      if (spread > SPREAD_frac)
        notes.push(
          message`the runs from ${q("speed", high_mps / MPS_PER_KMH)} to ${q("speed", low_mps / MPS_PER_KMH)} differ by ${q("fraction", spread, 2)}: look for wind, traffic or a slope`,
        );
    }
  }
  if (fit.residual_s > 0)
    notes.push(message`the law misses the measured times by ${n(fit.residual_s, 2)} s (root mean square)`);
  notes.push(
    message`in it: tyres, wheel bearings, dragging brakes, axle and propeller shaft, as they turn in neutral; these are not counted again. Not in it: the drag at the gearbox input`,
  );
  return notes;
}

import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH, MPS_PER_MPH } from "../../../shared/units.ts";
import type { CoastBand, CoastDown } from "../../vehicle/coastDown/evaluateCoastDown.ts";

/** Of cars, from a streamlined two-seater to a tall lorry; and of tyres, from the best on a smooth road to mud tread. Assumed. */
const CAR_m2 = { low: 0.4, high: 6 };
const TYRES = { low: 0.005, high: 0.05 };
/** Of most cars, by the mass that rolled: a drag area up to the first below `light_kg`, up to the second above. Common practice, no source. */
const MOST_m2 = { low: 0.5, high: [1.1, 2], light_kg: 1300 } as const;
const MOST_TYRES = { low: 0.011, high: 0.022 };
/** Runs of one band that differ by more were disturbed: wind, traffic, a slope. Assumed. */
const SPREAD_frac = 0.1;

/** What a person must know of a coast-down's result: what is in it, what is doubtful, and how sure it is. */
export function coastDownNotes(bands: readonly CoastBand[], found: CoastDown): Message[] {
  const { dragArea_m2, rolling_coeff, fit } = found;
  const notes: Message[] = [];
  const [drag_m2, rolling] = [dragArea_m2.value, rolling_coeff.value];
  const figures = (area_m2: number, coeff: number) =>
    message`a drag area of ${q("area", area_m2)} and a rolling coefficient of ${n(coeff)}`;
  if (!isWithin(drag_m2, CAR_m2) || !isWithin(rolling, TYRES)) {
    const words = message`${figures(drag_m2, rolling)} are those of hardly any car`;
    notes.push(message`${words}: were the speeds mph and read as km/h, or the other way round? Is the mass right?`);
  } else {
    const other = otherUnit(found);
    if (other) {
      const words = message`${figures(drag_m2, rolling)} are those of few cars of this mass`;
      notes.push(
        message`${words}: were the speeds ${other.unit}? They would then be ${q("area", other.drag_m2)} and ${n(other.rolling)}, as most cars have`,
      );
    }
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

/**
 * The other unit of speed, where the result is unlike most cars and would be like them had the speeds been in that: with speeds k times as
 * high the constant force is k times as large, and that with the square of speed 1/k.
 */
function otherUnit({ dragArea_m2, rolling_coeff, mass_kg }: CoastDown) {
  const area = { low: MOST_m2.low, high: MOST_m2.high[mass_kg < MOST_m2.light_kg ? 0 : 1] };
  const isUsual = (drag_m2: number, rolling: number) => isWithin(drag_m2, area) && isWithin(rolling, MOST_TYRES);
  const [drag_m2, rolling] = [dragArea_m2.value, rolling_coeff.value];
  if (isUsual(drag_m2, rolling)) return undefined;
  const others = (["mph", "km/h"] as const).map((unit) => {
    const k = unit === "mph" ? MPS_PER_MPH / MPS_PER_KMH : MPS_PER_KMH / MPS_PER_MPH;
    return { unit, drag_m2: drag_m2 / k, rolling: rolling * k };
  });
  return others.find((other) => isUsual(other.drag_m2, other.rolling));
}

function isWithin(value: number, { low, high }: { readonly low: number; readonly high: number }): boolean {
  return value >= low && value <= high;
}

import { type Message, message, whole } from "../../../shared/quantity/message.ts";
import { leftBetween } from "../answer/leftWords.ts";
import { measurementOf } from "../answer/measurements.ts";
import type { VariedPack } from "./varyPack.ts";

/** Fewer kilometres than this are not worth a measurement. Assumed. */
const WORTH_km = 0.5;

/** What the variants of one pack come to, in sentences that hold for their numbers. */
export function varyWords({ pack, driving, variants, left_km, home_frac, inputs }: VariedPack): Message[] {
  if (!left_km) return [message`${pack}: the car does not drive this road in any of ${variants} variants.`];
  const { p5, p50, p95 } = left_km.tenYearsWinter;
  const homes = Math.round(100 * home_frac.tenYearsWinter);
  const often = homes === 100 ? "always" : homes === 0 ? "never" : `in ${homes} of 100 cases`;
  const stuck =
    driving < variants
      ? [message`In ${variants - driving} of ${variants} variants the car does not drive this road.`]
      : [];
  return [
    message`${pack}: on the usual day at ten years in winter it comes home ${often}; what is left lies ${leftBetween({ value: p50, low: p5, high: p95 })} in nine cases of ten.`,
    ...stuck,
    ...measureFirst(inputs),
  ];
}

function measureFirst([first]: VariedPack["inputs"]): Message[] {
  if (first === undefined) return [message`Nothing that the range hangs on is open.`];
  if (first.gain_km < WORTH_km) return [message`No single measurement would narrow that to speak of.`];
  const narrower = message`what is left would be known better by ${whole("distance", first.gain_km, "nearest")}`;
  if (first.open === undefined) return [message`Most of it is the road: with more days of the log ${narrower}.`];
  return [message`Measure first: ${measurementOf(first.open.path).name}; ${narrower}.`];
}

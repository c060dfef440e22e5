import { firstWhere } from "./halving.ts";

/** A value at a place: a straight line between points whose places rise, level before the first and after the last one. */
export function straightAt(places: ArrayLike<number>, values: ArrayLike<number>, at: number): number {
  const last = places.length - 1;
  if (at <= places[0]) return values[0];
  if (at >= places[last]) return values[last];
  const high = firstWhere(1, last, (i) => places[i] > at);
  const low = high - 1;
  const share_frac = (at - places[low]) / (places[high] - places[low]);
  return values[low] + share_frac * (values[high] - values[low]);
}

import type { Hours } from "./schema/clock.ts";

const HOURS_A_DAY = 24;

/** A time of day in hours since midnight. It has passed its schema. */
export function clock_h(time: string): number {
  const [hours = 0, minutes = 0] = time.split(":").map(Number);
  return hours + minutes / 60;
}

/** How long a span lasts, in hours: 23:30 to 7:30 are 8. */
export function span_h({ from, to }: Hours): number {
  return (clock_h(to) - clock_h(from) + HOURS_A_DAY) % HOURS_A_DAY;
}

/** The pieces of a span within one day, in hours since midnight: of 23:30 to 7:30 from 0 to 7.5 and from 23.5 to 24. */
function pieces_h(span: Hours): readonly (readonly [from_h: number, to_h: number])[] {
  const [from_h, to_h] = [clock_h(span.from), clock_h(span.to)];
  if (from_h < to_h) return [[from_h, to_h]];
  return to_h === 0
    ? [[from_h, HOURS_A_DAY]]
    : [
        [0, to_h],
        [from_h, HOURS_A_DAY],
      ];
}

/** Whether a time of day, in hours since midnight, lies in a span; its beginning does and its end does not. */
export function isWithin(span: Hours, time_h: number): boolean {
  return pieces_h(span).some(([from_h, to_h]) => time_h >= from_h && time_h < to_h);
}

/** How many hours of a day two spans have in common. */
export function common_h(one: Hours, other: Hours): number {
  return pieces_h(one).reduce(
    (sum_h, [from_h, to_h]) =>
      pieces_h(other).reduce(
        (sum, [otherFrom_h, otherTo_h]) => sum + Math.max(0, Math.min(to_h, otherTo_h) - Math.max(from_h, otherFrom_h)),
        sum_h,
      ),
    0,
  );
}

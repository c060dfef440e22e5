import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { toFigures } from "../../../shared/quantity/toFigures.ts";
import { S_PER_DAY, S_PER_H, S_PER_MIN } from "../../../shared/units.ts";

/** `YYYY-MM-DD` of a moment. */
export function writeDate(time_s: number): string {
  return new Date(time_s * 1000).toISOString().slice(0, 10);
}

/** `HH:MM:SS` of a moment, in UTC unless an offset is given. */
export function writeClock(time_s: number, utcOffset_s = 0): string {
  return new Date(Math.round(time_s + utcOffset_s) * 1000).toISOString().slice(11, 19);
}

/** `46 days`, `3 h 12 min`, `4 min 5 s` or `31 s`: a length of time for people. A nought behind is left out: `5 min`. */
export function writeDuration(duration_s: number): string {
  const whole_s = Math.round(duration_s);
  const minutes = Math.round(whole_s / S_PER_MIN);
  if (minutes >= (2 * S_PER_DAY) / S_PER_MIN) return `${formatNumber(whole_s / S_PER_DAY)} days`;
  if (whole_s >= S_PER_H) return pair(Math.floor(minutes / 60), "h", minutes % 60, "min");
  return whole_s >= S_PER_MIN ? pair(Math.floor(whole_s / S_PER_MIN), "min", whole_s % S_PER_MIN, "s") : `${whole_s} s`;
}

/** A time between two fixes to two figures, without a power of ten: `0.2 s`, `30 s`, `5 min`, `1 h`. */
export function writeInterval(interval_s: number): string {
  return toFigures(interval_s, 2) < S_PER_MIN ? `${formatNumber(interval_s, 2)} s` : writeDuration(interval_s);
}

function pair(large: number, largeUnit: string, small: number, smallUnit: string): string {
  return small === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${small} ${smallUnit}`;
}

import { answer, type Written } from "./answers.ts";
import type { QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

/** A rate of a year as a share: `3 %` and a bare `3` are 0.03, since nobody says such a rate otherwise; `-1 %` is a fall. */
export function readRate(written: Written): QuantityReading {
  const number = readNumber(written.text);
  if (number === undefined) return unreadable(written);
  const unit = number.rest.trim().toLowerCase();
  if (!/^(|%|percent|per cent|pc|pct)( a year)?$/.test(unit)) return unknownUnit(written, unit);
  return answer(written, number.value / 100, { notes: number.note === undefined ? [] : [number.note], digits: 12 });
}

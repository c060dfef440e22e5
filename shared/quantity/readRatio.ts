import { answer, refuse, type Written } from "./answers.ts";
import { formatNumber } from "./formatNumber.ts";
import { isAllowed, type Likely, likelyMeant } from "./likelyMeant.ts";
import type { QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

/**
 * A gear's ratio or a final drive, turns in over turns out: `3.42`, `3.42:1`, or a pair of tooth counts, `41/9`, `41:9`,
 * `9 x 41`.
 *
 * People write a crown wheel and pinion either way round, and an axle always gears down: a final drive below 1 is turned
 * over and that is said. A gear may truly be below 1 (an overdrive), so it is taken as written, and only asked
 * back where it is out of bounds.
 */
export function readRatio(written: Written): QuantityReading {
  const { kind, options } = written;
  const teeth = /^([\d.,]+) ?(?:\/|:|x|to|on) ?([\d.,]+)(?: ?(?:t|teeth))?$/i.exec(written.text);
  const first = readNumber(teeth?.[1] ?? written.text);
  const second = readNumber(teeth?.[2] ?? "1");
  if (first === undefined || second === undefined) return unreadable(written);
  const tail = first.rest.replace(/^ ?(:1|: 1|to 1|to one)$/i, "").trim();
  if (tail !== "") return unknownUnit(written, tail);
  if (second.value === 0 || first.value === 0) {
    return refuse(written, "quantity-range", `found ${written.typed}, both tooth counts and a ratio must be above 0`);
  }
  const comma = first.decimalComma;
  // 4,111 can only be 4.111 where 4111 is impossible
  const isComma = comma !== undefined && !isAllowed(kind, first.value, options) && isAllowed(kind, comma, options);
  const over = isComma ? comma : first.value;
  const ratio = over / second.value;
  const notes = [...(isComma ? ["comma read as the decimal point"] : first.note === undefined ? [] : [first.note])];
  const turnedText = teeth
    ? `${formatNumber(second.value, 12)}/${formatNumber(over, 12)}`
    : `1/${formatNumber(over, 12)}`;
  const digits = teeth ? 3 : 12;
  if (kind === "finalDrive" && ratio < 1 && ratio > 0) {
    const turned = second.value / over;
    const note = `turned over, ${turnedText}: a final drive is above 1`;
    return answer(written, turned, {
      notes: [...notes, note],
      digits: 3,
      likely: guess(written, over, teeth !== null),
    });
  }
  const turned: Likely = { text: teeth ? turnedText : formatNumber(1 / ratio), value: 1 / ratio };
  const likely = ratio < 1 && isAllowed(kind, turned.value, options) ? turned : guess(written, over, teeth !== null);
  return answer(written, ratio, { notes, digits, likely });
}

function guess(written: Written, number: number, isTeeth: boolean): Likely | undefined {
  return isTeeth ? undefined : likelyMeant(written.kind, number, "", written.options);
}

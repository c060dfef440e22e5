import { formatNumber } from "../formatNumber.ts";
import { answer, refuse, type Written } from "./answers.ts";
import { isAllowed, type Likely, likelyMeant } from "./likelyMeant.ts";
import type { QuantityQuestion, QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

const inOrder = /^([\d.,]+) ?(?:t|teeth)? ?(?:\/|:|x|to|on) ?([\d.,]+) ?(?:t|teeth)?$/i;
const unorderedTeeth = /^(\d{1,3}) ?(?:t|teeth)? ?(?:and|&|with|, |-) ?(\d{1,3}) ?(?:t|teeth)?$/i;

/**
 * A gear's ratio or a final drive, turns in over turns out: `3.42`, `3.42:1`, or a pair of tooth counts, `41/9`, `41:9`,
 * `9 x 41`, `10 and 43 teeth`.
 *
 * People write a crown wheel and pinion either way round, and an axle always gears down: a final drive below 1 is turned
 * over and that is said. A gear may truly be below 1 (an overdrive), so it is taken as written, and only asked
 * back where it is out of bounds.
 */
export function readRatio(written: Written): QuantityReading {
  const { kind, options } = written;
  const unordered = unorderedTeeth.exec(written.text);
  if (unordered) return readUnordered(written, Number(unordered[1]), Number(unordered[2]));
  const teeth = inOrder.exec(written.text);
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

/**
 * Two tooth counts that say nothing of which drives: an axle gears down; of a gear the one that can be, and where both can,
 * it is asked.
 */
function readUnordered(written: Written, first: number, second: number): QuantityReading {
  const { kind, options } = written;
  const [few, many] = [Math.min(first, second), Math.max(first, second)];
  if (few === 0) {
    return refuse(written, "quantity-range", `found ${written.typed}, both tooth counts must be above 0`);
  }
  const isEither = kind === "gearRatio" && few !== many && isAllowed(kind, few / many, options);
  const texts = [`${many}/${few}`, `${few}/${many}`];
  const question: QuantityQuestion = {
    id: "teeth",
    text: "which of the two wheels drives the other?",
    choices: texts.map((text) => ({ label: text, text })),
  };
  return answer(written, many / few, { notes: [`taken as ${many}/${few}`], ...(isEither && { question }) });
}

function guess(written: Written, number: number, isTeeth: boolean): Likely | undefined {
  return isTeeth ? undefined : likelyMeant(written.kind, number, "", written.options);
}

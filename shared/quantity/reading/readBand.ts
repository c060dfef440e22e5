import type { QuantityKind } from "../kinds/kinds.ts";
import { answer, showBand, type Written } from "./answers.ts";
import type { QuantityReading, Understood } from "./reading.ts";
import { readNumber } from "./readNumber.ts";

const hyphen = /^(?<low>\S+(?: \S+)*)(?<space> ?)-\k<space>(?<high>[.\d].*)$/;
const separators = [
  /^between (?<low>.+) and (?<high>.+)$/i,
  /^(?:from )?(?<low>.+?) to (?<high>.+)$/i,
  /^(?<low>.*[^. ]) ?\.\.+ ?(?<high>.+)$/,
  hyphen,
];

/** Kinds of which a band means nothing: counted things, and turns in over turns out, where "to" parts the two. */
const exact: ReadonlySet<QuantityKind> = new Set<QuantityKind>(["count", "gearRatio", "finalDrive"]);

/**
 * Two ends of a band, `0.50 to 0.65`, `60-65 mph`, `between 1 in 7 and 1 in 6`, as the middle with plus or minus half the
 * distance; undefined where the text is none. A first end without a unit has that of the second. `read` reads one end.
 */
export function readBand(written: Written, read: (end: Written) => QuantityReading): QuantityReading | undefined {
  if (exact.has(written.kind)) return undefined;
  for (const separator of separators) {
    const { low, high } = separator.exec(written.text)?.groups ?? {};
    if (low === undefined || high === undefined) continue;
    const unit = readNumber(high)?.rest.trim() ?? "";
    const isBare = readNumber(low)?.rest.trim() === "";
    const first = readEnd(written, isBare ? `${low} ${unit}`.trim() : low, read);
    const second = readEnd(written, high, read);
    // 60-65 is a band; 953 - 150 is rather a difference
    const isBand = separator !== hyphen || (first && second && first.value < second.value);
    if (first && second && isBand) return between(written, first, second, high);
  }
  return undefined;
}

function readEnd(written: Written, text: string, read: (end: Written) => QuantityReading): Understood | undefined {
  const reading = read({ ...written, text, typed: text });
  return reading.ok && !reading.unknown && reading.plusMinus === undefined ? reading : undefined;
}

function between(written: Written, first: Understood, second: Understood, high: string): QuantityReading {
  const value = (first.value + second.value) / 2;
  const plusMinus = Math.abs(second.value - first.value) / 2;
  const { kind, text } = written;
  const question = second.question && {
    ...second.question,
    choices: second.question.choices.map((choice) => ({
      ...choice,
      text: text.slice(0, text.length - high.length) + choice.text,
    })),
  };
  const notes = [...new Set([...first.notes, ...second.notes, "a band: its middle is used"])];
  return answer(written, value, {
    notes,
    question,
    plusMinus,
    shown: showBand(kind, value, plusMinus, 4, written.options.units),
  });
}

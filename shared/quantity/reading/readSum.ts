import { kindInfo, type QuantityKind } from "../kinds/kinds.ts";
import { tidyUnit } from "../tidyText.ts";
import { answer, showBand, type Written } from "./answers.ts";
import type { QuantityReading, Understood } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { readPlain } from "./readPlain.ts";

/** Kinds whose values do not add up to another of the kind. */
const notAdded: ReadonlySet<QuantityKind> = new Set<QuantityKind>([
  ...(["temperature", "gradient", "gearRatio", "finalDrive", "wheelRadius", "circumference", "fraction"] as const),
  ...(["fuelUse", "energyUse", "speed", "pressure", "airPressure", "rotation"] as const),
]);

/**
 * Terms that add up, `40+35+18`, `2 x 75 kg + 40 kg`; undefined where the text is none. Terms without a unit have that of
 * the last one. Each term is read without bounds, their sum with them.
 */
export function readSum(written: Written): QuantityReading | undefined {
  const { kind, options } = written;
  const texts = written.text.split("+").map((term) => term.trim());
  if (notAdded.has(kind) || texts.includes("")) return undefined;
  const terms = texts.map((text) => times(text));
  if (terms.length === 1 && terms[0]?.count === 1) return undefined;
  const units = terms.map(({ each }) => readNumber(each)?.rest.trim() ?? "");
  const own = options.bareUnit ?? kindInfo(kind).unit;
  const last = units.at(-1) ?? "";
  if (last === "" && units.some((unit) => unit !== "" && tidyUnit(unit) !== tidyUnit(own))) return undefined;
  const unbounded = { ...options, min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };
  let [value, plusMinus, isPlain] = [0, 0, true];
  const notes = new Set<string>();
  let question: Understood["question"];
  for (const [i, { count, each, before }] of terms.entries()) {
    const text = units[i] === "" ? `${each} ${last}`.trim() : each;
    const term = readPlain({ kind, text, typed: text, options: unbounded });
    if (!term.ok || term.unknown) return undefined;
    isPlain &&= term.isAsTyped;
    value += count * term.value;
    plusMinus += count * (term.plusMinus ?? 0);
    for (const note of term.notes) notes.add(note);
    question ??= term.question && {
      ...term.question,
      choices: term.question.choices.map((choice) => ({
        ...choice,
        text: written.text.replace(before + each, before + choice.text),
      })),
    };
  }
  const aside = { notes: [...notes], question, digits: isPlain ? 12 : 4 };
  if (plusMinus === 0) return answer(written, value, aside);
  return answer(written, value, {
    ...aside,
    plusMinus,
    shown: showBand(kind, value, plusMinus, aside.digits, written.options.units),
  });
}

/** `2 x 75 kg` is two of 75 kg. */
function times(text: string): { count: number; each: string; before: string } {
  const found = /^(\d{1,4}) ?[x*] ?(?=[\d.])(.+)$/i.exec(text);
  if (!found) return { count: 1, each: text, before: "" };
  const each = found[2] ?? "";
  return { count: Number(found[1]), each, before: text.slice(0, text.length - each.length) };
}

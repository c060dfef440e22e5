import { formatNumber } from "../formatNumber.ts";
import { kindInfo } from "../kinds/kinds.ts";
import { applyUnit } from "../kinds/unitRule.ts";
import { type Aside, answer, refuse, showBand, type Written } from "./answers.ts";
import { isAllowed, isPlausible, likelyMeant } from "./likelyMeant.ts";
import type { QuantityOptions, QuantityQuestion, QuantityReading } from "./reading.ts";
import { type NumberRead, readNumber } from "./readNumber.ts";
import { readUnit, type UnitRead } from "./readUnit.ts";

interface Part {
  readonly number: NumberRead;
  readonly unit: UnitRead;
}

/**
 * A number with a unit, or several that add up (`3 ft 6 in`, `14 cwt 2 qr`), with or without plus-or-minus (`1480 ± 10
 * kg`, `1480 kg ± 2 %`). This is how most kinds are read.
 */
export function readPlain(written: Written): QuantityReading {
  const { kind, options } = written;
  const [main = "", tolerance, ...more] = written.text.split("±").map((piece) => piece.trim());
  if (more.length > 0) return unreadable(written);
  // 1480 ± 10 kg: the unit stands once, at the end
  const trailing = tolerance === undefined ? "" : (readNumber(tolerance)?.rest.trim() ?? "");
  const isBare = readNumber(main)?.rest.trim() === "";
  const parts = readParts(
    written,
    isBare && trailing !== "" && !trailing.startsWith("%") ? `${main} ${trailing}` : main,
  );
  if (!Array.isArray(parts)) return parts;
  const [first, ...others] = parts;
  if (first === undefined) return unreadable(written);

  const added = others.reduce((sum, part) => sum + applyUnit(part.unit.rule, part.number.value), 0);
  const size = applyUnit(first.unit.rule, first.number.value);
  const value = size < 0 ? size - added : size + added;
  const likely = others.length === 0 ? likelyMeant(kind, first.number.value, first.unit.spelling, options) : undefined;
  const notes = parts.flatMap(({ number, unit }) => [number.note, unit.note].filter((note) => note !== undefined));
  const aside = {
    notes: [...new Set(notes)],
    likely,
    question: unitQuestion(written, parts) ?? (others.length === 0 ? askPoint(written, value, first) : undefined),
    digits: first.unit.rule === 1 && others.length === 0 ? 12 : 3,
  };
  if (tolerance !== undefined) {
    const plusMinus = readTolerance(written, tolerance, first.unit, value);
    if (plusMinus === undefined) return unreadable(written);
    const shown = showBand(kind, value, plusMinus, aside.digits, written.options.units);
    return answer(written, value, { ...aside, plusMinus, shown });
  }
  const comma = first.number.decimalComma;
  if (comma === undefined || others.length > 0) return answer(written, value, aside);
  return answerComma(written, value, applyUnit(first.unit.rule, comma), first, aside);
}

/** A comma before three digits: thousands or decimal, by what is possible; asked where both are. */
function answerComma(written: Written, thousands: number, decimal: number, part: Part, aside: Aside): QuantityReading {
  const { kind, options } = written;
  if (!isAllowed(kind, decimal, options)) return answer(written, thousands, aside);
  if (!isAllowed(kind, thousands, options)) {
    return answer(written, decimal, { ...aside, notes: [...(aside.notes ?? []), "comma read as the decimal point"] });
  }
  if (isPlausible(kind, thousands, options) && !isPlausible(kind, decimal, options))
    return answer(written, thousands, aside);
  return answer(written, thousands, {
    ...aside,
    question: askMark(written, part.number.value, part.number.decimalComma ?? 0, part),
  });
}

/** A point before three digits where a thousand times as much is what one would expect: `1.480` for a car's kilograms. */
function askPoint(written: Written, value: number, part: Part): QuantityQuestion | undefined {
  const { kind, options, text } = written;
  const thousandfold = 1000 * part.number.value;
  const isOdd =
    !isPlausible(kind, value, options) && typeof part.unit.rule === "number" && /^\d{1,3}\.\d{3}(?![\d.,])/.test(text);
  return isOdd && isPlausible(kind, applyUnit(part.unit.rule, thousandfold), options)
    ? askMark(written, part.number.value, thousandfold, part)
    : undefined;
}

function askMark(written: Written, first: number, second: number, part: Part): QuantityQuestion {
  const unit = part.number.rest.trim();
  const texts = [first, second].map((x) => `${formatNumber(x, 12)} ${unit}`.trim());
  return {
    id: "comma",
    text: `does the mark in ${written.typed} stand for thousands, or is it the decimal point?`,
    choices: texts.map((text) => ({ label: text, text })),
  };
}

/** `14 cwt 2 qr`: numbers each with its unit, or a refusal that says which word is not one. */
function readParts(written: Written, text: string): Part[] | QuantityReading {
  const { kind } = written;
  let { options } = written;
  const parts: Part[] = [];
  let rest = text;
  while (rest !== "") {
    const number = readNumber(rest);
    if (number === undefined) return unreadable(written);
    const behind = number.rest.trim();
    const whole = readUnit(kind, behind, options);
    if (whole && (parts.length === 0 || behind !== "")) return [...parts, { number, unit: whole }];
    const { unit, after } = firstUnit(written, behind, options);
    if (unit === undefined || typeof unit.rule !== "number") return unknownUnit(written, behind);
    parts.push({ number, unit });
    const size = /^cwt(?:of)?(112|100)lb$/.exec(unit.spelling)?.[1];
    if (size !== undefined) options = { ...options, cwt: size === "100" ? "100" : "112" }; // its quarters go with it
    rest = after;
  }
  return parts;
}

/** The longest unit that a text begins with and that has a number behind it: `cwt (112 lb)` rather than `cwt (`. */
function firstUnit(written: Written, text: string, options: QuantityOptions): { unit?: UnitRead; after: string } {
  for (const { index } of [...text.matchAll(/(?<!\d)\d/g)].reverse()) {
    const head = text.slice(0, index).trim();
    const unit = head === "" ? undefined : readUnit(written.kind, head, options);
    if (unit) return { unit, after: text.slice(index) };
  }
  return { after: "" };
}

function readTolerance(written: Written, text: string, unit: UnitRead, value: number): number | undefined {
  const number = readNumber(text);
  if (number === undefined || number.value < 0) return undefined;
  const behind = number.rest.trim();
  if (behind === "%") return (Math.abs(value) * number.value) / 100;
  const own = behind === "" ? unit : readUnit(written.kind, behind, written.options);
  if (own === undefined) return undefined;
  const rule = own.rule;
  if (typeof rule === "object" && "over" in rule) return undefined;
  const size = number.value * (typeof rule === "number" ? rule : rule.factor);
  return Number.isFinite(size) ? size : undefined;
}

function unitQuestion(written: Written, parts: readonly Part[]): QuantityQuestion | undefined {
  const asked = parts.find((part) => part.unit.asks !== undefined)?.unit.asks;
  if (asked === "cwt") {
    const text = (size: string) => written.text.replace(/(cwts?|hundredweights?)/i, `cwt (${size} lb)`);
    return {
      id: "cwt",
      text: "a hundredweight of 112 lb, or the one of 100 lb?",
      choices: [
        { label: "112 lb (50.8 kg)", text: text("112"), remember: { cwt: "112" } },
        { label: "100 lb (45.4 kg)", text: text("100"), remember: { cwt: "100" } },
      ],
    };
  }
  if (asked === "gallon") {
    const text = (which: string) => written.text.replace(/(mpg|miles per gallon|gallons?|gal)\b/i, `$1 ${which}`);
    return {
      id: "gallon",
      text: "a gallon of 4.546 l (imperial), or of 3.785 l (US)?",
      choices: [
        { label: "4.546 l (imperial)", text: text("imp"), remember: { gallon: "imperial" } },
        { label: "3.785 l (US)", text: text("US"), remember: { gallon: "us" } },
      ],
    };
  }
  return undefined;
}

/** Refusal of a text with no number in it, or more than one can tell apart. */
export function unreadable(written: Written): QuantityReading {
  const { name, unit } = kindInfo(written.kind);
  const wanted =
    unit === "" ? `${name} wants a number` : `${name} wants a number, in ${unit} if no unit stands behind it`;
  return refuse(written, "quantity-unreadable", `found ${written.typed}, ${wanted}`);
}

/** Refusal of a word behind a number that is no unit of the kind. */
export function unknownUnit(written: Written, word: string): QuantityReading {
  const { name, spellings } = kindInfo(written.kind);
  const wanted = spellings.length === 0 ? "a number alone" : spellings.join(", ");
  return refuse(
    written,
    "quantity-unit",
    `found ${written.typed}, ${word === "" ? "its last number has no unit" : `${word} is no unit for ${name}`}; use ${wanted}`,
  );
}

import { formatNumber } from "../formatNumber.ts";
import { kindInfo } from "../kinds/kinds.ts";
import { answer, refuse, type Written } from "./answers.ts";
import { isAllowed, type Likely } from "./likelyMeant.ts";
import type { QuantityOptions, QuantityQuestion, QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

/**
 * A share from 0 to 1: `85 %` and `0.85` and a bare `85` are all 0.85, the last since no share is 85. A bare number
 * from 1 to 5 could be either (all of it, or 1 %) and is asked; so is a percentage below 1 with a decimal, which
 * is likely the share itself (`0.85 %`). Above 100 % it is refused: there is no efficiency of 1.1. A refusal says what is
 * allowed as it was typed: a bare number hears of 0.5 to 1, a percentage of 50 to 100 %.
 */
export function readFraction(written: Written): QuantityReading {
  const { options } = written;
  const number = readNumber(written.text);
  if (number === undefined) return unreadable(written);
  const typed = formatNumber(number.value, 12);
  const unit = number.rest.trim().toLowerCase();
  const notes = number.note === undefined ? [] : [number.note];
  if (/^(%|percent|per cent|pc|pct)$/.test(unit)) {
    const isTiny = number.value > 0 && number.value < 1 && isAllowed("fraction", number.value, options);
    const whole = `${formatNumber(100 * number.value, 12)} %`;
    const question = isTiny ? choose(written, [`${typed} %`, whole]) : undefined;
    const likely = isTiny ? { text: whole, value: number.value } : lostPoint(number.value, " %", options);
    return answer(written, number.value / 100, { notes, question, likely, digits: 12 });
  }
  if (/^(‰|per mille)$/.test(unit)) return answer(written, number.value / 1000, { notes, digits: 12 });
  if (unit !== "") return unknownUnit(written, unit);
  if (number.value < 1) {
    if (isAllowed("fraction", number.value, options)) return answer(written, number.value, { notes, digits: 12 });
    return refuse(written, "quantity-range", `${written.typed} is not possible (${sharesAllowed(options)})`);
  }
  const share = number.value / 100;
  if (number.value < 5) {
    if (number.value === 1 && isAllowed("fraction", 1, options)) {
      return answer(written, 1, { notes, question: choose(written, ["100 %", "1 %"]), digits: 12 });
    }
    const percents = number.value === 1 ? [100, 1] : [number.value, 10 * number.value];
    const texts = percents
      .filter((percent) => isAllowed("fraction", percent / 100, options))
      .map((percent) => `${formatNumber(percent, 12)} %`);
    const question = texts.length > 0 ? choose(written, texts) : undefined;
    const message = `${written.typed} is not possible (${sharesAllowed(options)})`;
    if (!isAllowed("fraction", share, options)) {
      return refuse(written, question ? "quantity-ambiguous" : "quantity-range", message, undefined, question);
    }
    const hint = `${message}; write ${typed} % if percent is meant`;
    return refuse(written, "quantity-ambiguous", hint, { text: `${typed} %`, value: share }, question);
  }
  const likely = lostPoint(number.value, "", options);
  return answer(written, share, { notes: [...notes, "read as percent"], likely, digits: 12 });
}

/** What a percentage far above 100 was likely meant to be, its decimal point forgotten: 94 % for 940 %. */
function lostPoint(percent: number, unit: string, options: QuantityOptions): Likely | undefined {
  if (percent < 200) return undefined; // 112 % is more likely a mistake of another kind than 11.2 %
  const moved = [percent / 10, percent / 100].find((meant) => meant <= 100);
  if (moved === undefined || !isAllowed("fraction", moved / 100, options)) return undefined;
  return { text: `${formatNumber(moved, 12)}${unit}`, value: moved / 100 };
}

/** `0.5 to 1`: the bounds of a bare number are bare numbers. */
function sharesAllowed({ min, max }: QuantityOptions): string {
  const { min: least, max: most } = kindInfo("fraction");
  return `${formatNumber(min ?? least, 12)} to ${formatNumber(max ?? most, 12)}`;
}

function choose(written: Written, texts: readonly string[]): QuantityQuestion {
  return {
    id: "percent",
    text: `how is ${written.typed} meant?`,
    choices: texts.map((text) => ({ label: text, text })),
  };
}

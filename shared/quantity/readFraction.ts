import { answer, refuse, type Written } from "./answers.ts";
import { formatNumber } from "./formatNumber.ts";
import { isAllowed } from "./likelyMeant.ts";
import type { QuantityQuestion, QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

/**
 * A share from 0 to 1: `85 %` and `0.85` and a bare `85` are all 0.85, the last since no share is 85. A bare number
 * from 1 to 5 could be either (all of it, or 1 %) and is asked; so is a percentage below 1 with a decimal, which
 * is likely the share itself (`0.85 %`). Above 100 % it is refused: there is no efficiency of 1.1.
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
    const likely = isTiny ? { text: whole, value: number.value } : undefined;
    return answer(written, number.value / 100, { notes, question, likely, digits: 12 });
  }
  if (/^(‰|per mille)$/.test(unit)) return answer(written, number.value / 1000, { notes, digits: 12 });
  if (unit !== "") return unknownUnit(written, unit);
  if (number.value < 1) return answer(written, number.value, { notes, digits: 12 });
  const share = number.value / 100;
  if (number.value < 5) {
    const isAll = number.value === 1;
    const question = choose(
      written,
      isAll ? ["100 %", "1 %"] : [`${typed} %`, `${formatNumber(10 * number.value, 12)} %`],
    );
    if (isAll && isAllowed("fraction", 1, options)) return answer(written, 1, { notes, question, digits: 12 });
    const likely = isAllowed("fraction", share, options) ? { text: `${typed} %`, value: share } : undefined;
    const message = `found ${written.typed}, a share is 0 to 1; write ${typed} % if percent is meant`;
    return refuse(written, "quantity-ambiguous", message, likely, question);
  }
  return answer(written, share, { notes: [...notes, "read as percent"], digits: 12 });
}

function choose(written: Written, texts: readonly string[]): QuantityQuestion {
  return {
    id: "percent",
    text: `how is ${written.typed} meant?`,
    choices: texts.map((text) => ({ label: text, text })),
  };
}

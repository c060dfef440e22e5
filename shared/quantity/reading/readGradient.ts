import { formatNumber } from "../formatNumber.ts";
import { answer, refuse, type Written } from "./answers.ts";
import { isPlausible } from "./likelyMeant.ts";
import type { QuantityQuestion, QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { unknownUnit, unreadable } from "./readPlain.ts";

/**
 * A gradient as rise over run: `1 in 6`, `1:6` and `1/6` are 0.1667, `14 %` is 0.14, `8 deg` is tan 8° = 0.1405, and a
 * bare `0.14` can only be the ratio. A bare `14` could be percent, degrees or 1 in 14, and is asked. `down` or a minus
 * makes it a fall.
 *
 * Two slips are asked about though they read: degrees that make a road steeper than any (25 deg is 46.6 %), and a
 * percentage so small that the ratio was likely meant (0.14 %).
 */
export function readGradient(written: Written): QuantityReading {
  const down = /\b(down|downhill|fall|falling)\b/i;
  const words = written.text
    .replace(down, "")
    .replace(/\b(up|uphill|rise|rising|slope)\b/i, "")
    .trim();
  const sign = down.test(written.text) ? -1 : 1;
  const pair = /^(?:([+-]?[\d.,]+) ?)(?:-?in-?|:|to|\/) ?([\d.,]+(?: \d+\/\d+)?)$/i.exec(words);
  if (pair) return readOneIn(written, pair[1] ?? "", pair[2] ?? "", sign);

  const number = readNumber(words);
  if (number === undefined) return unreadable(written);
  const size = sign * number.value;
  const typed = formatNumber(number.value, 12);
  const notes = number.note === undefined ? [] : [number.note];
  const unit = number.rest.trim().toLowerCase();
  if (/^(%|percent|per cent|pc|pct)$/.test(unit)) {
    const ratio = size / 100;
    const isTiny = Math.abs(number.value) < 1 && number.value !== 0;
    const question = isTiny ? choose(written, [`${typed} %`, `${formatNumber(100 * number.value, 12)} %`]) : undefined;
    return answer(written, ratio, { shown: show(ratio, "1 in"), notes, question, likely: undefined });
  }
  if (/^(‰|per mille|per mil)$/.test(unit))
    return answer(written, size / 1000, { shown: show(size / 1000, "%"), notes });
  if (/^(°|deg|degs|degree|degrees)$/.test(unit)) {
    if (Math.abs(number.value) >= 90)
      return refuse(written, "quantity-range", `found ${written.typed}, a gradient is under 45 deg`);
    const ratio = Math.tan((size * Math.PI) / 180);
    const asPercent = { text: `${typed} %`, value: size / 100 };
    const isSteep =
      !isPlausible(written.kind, ratio, written.options) && isPlausible(written.kind, asPercent.value, written.options);
    const question = isSteep ? choose(written, [`${typed} deg`, `${typed} %`]) : undefined;
    return answer(written, ratio, {
      shown: show(ratio, "%"),
      notes,
      question,
      ...(isSteep ? { likely: asPercent } : {}),
    });
  }
  if (unit !== "") return unknownUnit(written, unit);
  if (Math.abs(number.value) < 1) {
    return answer(written, size, { shown: show(size, "%"), notes: [...notes, "read as rise over run"] });
  }
  const question = choose(written, [`${typed} %`, `1 in ${typed}`, `${typed} deg`]);
  const likely = isPlausible(written.kind, size / 100, written.options)
    ? { text: `${typed} %`, value: size / 100 }
    : undefined;
  return refuse(
    written,
    "quantity-ambiguous",
    `found ${written.typed}, wanted with its unit: ${typed} %, 1 in ${typed} or ${typed} deg`,
    likely,
    question,
  );
}

function readOneIn(written: Written, over: string, under: string, sign: number): QuantityReading {
  const rise = readNumber(over);
  const run = readNumber(under);
  if (rise === undefined || run === undefined || rise.rest !== "" || run.rest !== "") return unreadable(written);
  if (run.value === 0) {
    return refuse(
      written,
      "quantity-range",
      `found ${written.typed}, the level length behind "in" must be above 0: 1 in 6`,
    );
  }
  const ratio = (sign * rise.value) / run.value;
  const turned = run.value / (rise.value || Number.NaN);
  const likely =
    Math.abs(ratio) > 1 && isPlausible(written.kind, turned, written.options)
      ? { text: `${formatNumber(run.value, 12)} in ${formatNumber(rise.value, 12)}`, value: turned }
      : undefined;
  return answer(written, ratio, { shown: show(ratio, "%"), likely });
}

/** `14 % (rise over run)`, or `1 in 7.14` beside a percentage. */
function show(ratio: number, as: "%" | "1 in"): string {
  if (as === "1 in" && ratio !== 0) {
    return `1 in ${formatNumber(Math.abs(1 / ratio))}${ratio < 0 ? " down" : ""} (rise over run)`;
  }
  return `${formatNumber(100 * ratio)} % (rise over run)`;
}

function choose(written: Written, texts: readonly string[]): QuantityQuestion {
  const down = /down|fall/i.test(written.text) ? " down" : "";
  return {
    id: "gradient",
    text: `how is ${written.typed} meant?`,
    choices: texts.map((text) => ({ label: text, text: text + down })),
  };
}

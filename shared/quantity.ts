import { formatNumber } from "./quantity/formatNumber.ts";
import { kindInfo, type QuantityKind } from "./quantity/kinds/kinds.ts";
import { refuse, type Written } from "./quantity/reading/answers.ts";
import { readArea } from "./quantity/reading/readArea.ts";
import { readBand } from "./quantity/reading/readBand.ts";
import { readClock } from "./quantity/reading/readClock.ts";
import { readFraction } from "./quantity/reading/readFraction.ts";
import { readGradient } from "./quantity/reading/readGradient.ts";
import type { QuantityOptions, QuantityReading } from "./quantity/reading/reading.ts";
import { readNumber } from "./quantity/reading/readNumber.ts";
import { readPlain } from "./quantity/reading/readPlain.ts";
import { readRate } from "./quantity/reading/readRate.ts";
import { readRatio } from "./quantity/reading/readRatio.ts";
import { readSum } from "./quantity/reading/readSum.ts";
import { readWheel } from "./quantity/reading/readWheel.ts";
import { tidyText } from "./quantity/tidyText.ts";

const unknowns = /^(\?+|unknown|not known|don'?t know|do not know|dunno|no idea|n\/k|unk|none known)[.!]?$/i;
const about = /^(about|approx\.?|approximately|roughly|around|circa|ca\.?|c\.|~|≈)\s*/i;
const longest = 200; // characters; what a workshop writes in a field is shorter by far

/**
 * What a workshop wrote, as a number in the unit that the job file has for this kind, with how it was understood; or
 * "unknown"; or why it is refused and what was likely meant. Never throws and never returns a number that is not finite.
 *
 * A decimal comma is read only where it can be nothing else. Sums (`40+35+18`), bands (`0.50 to 0.65`) and areas as width by
 * height by share are worked out. Bounds are the kind's own, or the field's where given.
 */
export function readQuantity(kind: QuantityKind, text: string, options: QuantityOptions = {}): QuantityReading {
  const typed = text.trim();
  const tidy = tidyText(text);
  const words = tidy.replace(about, "");
  const written: Written = { kind, typed: typed.slice(0, longest), text: words, options };
  if (words === "")
    return refuse(written, "quantity-empty", `nothing written: write ${kindInfo(kind).name}, or unknown`);
  if (typed.length > longest)
    return refuse(written, "quantity-unreadable", `found ${typed.length} characters, at most ${longest} are read`);
  if (unknowns.test(tidy)) {
    return { ok: true, unknown: true, understood: "unknown: the usual value with its band takes its place" };
  }
  const reading = readKind(written);
  return words === tidy || !reading.ok || reading.unknown
    ? reading
    : { ...reading, notes: [...reading.notes, "written as about"] };
}

/** As one value of the kind; where it is none, as a product, a sum or a band of such values. */
function readKind(written: Written): QuantityReading {
  const reading = readOne(written);
  if (reading.ok) return reading;
  return readArea(written, readKind) ?? readSum(written) ?? readBand(written, readOne) ?? reading;
}

function readOne(written: Written): QuantityReading {
  switch (written.kind) {
    case "gradient":
      return readGradient(written);
    case "gearRatio":
    case "finalDrive":
      return readRatio(written);
    case "wheelRadius":
    case "circumference":
      return readWheel(written);
    case "fraction":
      return readFraction(written);
    case "rate":
      return readRate(written);
    case "fuelUse":
      return readFuelUse(written);
    case "count":
      return readCount(written);
    case "duration":
    case "hours":
      return readClock(written) ?? readPlain(written);
    default:
      return readPlain(written);
  }
}

/** `26` alone could be miles to the gallon or litres for 100 km: the one grows as the other falls, so it is asked. */
function readFuelUse(written: Written): QuantityReading {
  const number = readNumber(written.text);
  if (number === undefined || number.rest.trim() !== "" || written.options.bareUnit !== undefined)
    return readPlain(written);
  const typed = formatNumber(number.value, 12);
  const texts = [`${typed} mpg`, `${typed} l/100 km`];
  return refuse(
    written,
    "quantity-ambiguous",
    `found ${written.typed}, wanted with its unit: ${texts.join(" or ")}`,
    undefined,
    {
      id: "consumption",
      text: `is ${written.typed} miles to the gallon, or litres for 100 km?`,
      choices: texts.map((choice) => ({ label: choice, text: choice })),
    },
  );
}

function readCount(written: Written): QuantityReading {
  const reading = readPlain(written);
  if (!reading.ok || reading.unknown || Number.isInteger(reading.value)) return reading;
  return refuse(written, "quantity-range", `found ${written.typed}, a count is a whole number`);
}

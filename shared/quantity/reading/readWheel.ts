import { M_PER_MILE, MM_PER_M } from "../../units.ts";
import { formatNumber } from "../formatNumber.ts";
import { answer, refuse, type Written } from "./answers.ts";
import type { QuantityReading } from "./reading.ts";
import { readNumber } from "./readNumber.ts";
import { readPlain } from "./readPlain.ts";
import { readUnit } from "./readUnit.ts";
import { type TyreMarking, tyreMarking } from "./tyreMarking.ts";

const turn = /\b(rolling circumference|circumference|circ|round|a turn|one turn|per turn)\b\.?/i;
const across = /\b(loaded diameter|free diameter|diameter|dia|across)\b\.?/i;
const spoke = /\b(loaded radius|rolling radius|radius|rad)\b\.?/i;

/**
 * A wheel's size, as loaded radius or as rolling circumference in mm, whichever the field wants: from a tyre's marking by rule of
 * thumb, from a tape measure (`1.85 m round`, `radius 282 mm`), or from turns to the mile. A length without a word is a radius
 * from 150 to 480 mm and a circumference from 1.3 m; between them it could be a diameter and is asked.
 */
export function readWheel(written: Written): QuantityReading {
  const marking = tyreMarking(written.text);
  if (marking) return fromMarking(written, marking);
  const revolutions = /^([\d.,]+) ?(?:revs?|turns|revolutions)(?: ?(?:\/|per|to the) ?mile)$/i.exec(written.text);
  if (revolutions) {
    const turns = readNumber(revolutions[1] ?? "");
    const many = turns?.decimalComma === undefined ? turns?.value : turns.value;
    if (many !== undefined && many > 0) return asRound(written, (M_PER_MILE * MM_PER_M) / many, []);
  }
  const lost = lostPoint(written.text);
  if (lost) {
    const meant = tyreMarking(lost);
    const likely = meant ? { text: lost, value: sizeFor(written, 2 * Math.PI * meant.loadedRadius_mm) } : undefined;
    if (likely)
      return refuse(
        written,
        "quantity-unreadable",
        `found ${written.typed}, a tyre this wide in mm there is not`,
        likely,
      );
  }
  const text = written.text
    .replace(turn, "")
    .replace(across, "")
    .replace(spoke, "")
    .replace(/^[:= ]+/, "")
    .trim();
  const size = lengthOf(text, written.options.bareUnit);
  if (size === undefined) return readPlain(written);
  const isUnladen = /free/i.test(written.text);
  if (turn.test(written.text)) return asRound(written, size, []);
  if (across.test(written.text)) {
    const note = isUnladen
      ? ["free diameter, taken 3 % smaller under load: common practice, no source"]
      : ["taken as the loaded wheel's"];
    return asRound(written, Math.PI * size * (isUnladen ? 0.97 : 1), note);
  }
  if (spoke.test(written.text)) return asRadius(written, size);
  if (written.kind === "circumference") return readPlain(written);
  if (size >= 1300) return asRound(written, size, ["read as the rolling circumference"]);
  if (size >= 150 && size <= 480) return asRadius(written, size);
  if (size < 150 || size > 900) {
    const reading = readPlain(written);
    // 1.85 alone: a turn in metres
    const isTurn = !reading.ok && size >= 1.3 && size <= 3 && Number(text) === size;
    const likely = { text: `${text} m round`, value: (size * MM_PER_M) / (2 * Math.PI) };
    return isTurn ? refuse(written, reading.problem.code, reading.problem.message, likely) : reading;
  }
  const texts = [`${text} free diameter`, `${text} loaded diameter`, `${text} radius`];
  const message = `found ${written.typed}, too large for a radius and too small for a circumference; say which: ${texts[0]}`;
  return refuse(written, "quantity-ambiguous", message, undefined, {
    id: "tyre",
    text: `what is ${written.typed}?`,
    choices: texts.map((choice) => ({ label: choice, text: choice })),
  });
}

function fromMarking(written: Written, marking: TyreMarking): QuantityReading {
  const value = sizeFor(written, 2 * Math.PI * marking.loadedRadius_mm);
  const round = `${formatNumber((2 * Math.PI * marking.loadedRadius_mm) / MM_PER_M)} m a turn`;
  const shown = written.kind === "circumference" ? round : `loaded radius ${formatNumber(value)} mm, ${round}`;
  return answer(written, value, { shown, notes: [marking.rule], plusMinus: marking.band_frac * value });
}

function asRound(written: Written, round_mm: number, notes: readonly string[]): QuantityReading {
  const value = sizeFor(written, round_mm);
  const round = `${formatNumber(round_mm / MM_PER_M)} m a turn`;
  return answer(written, value, {
    shown: written.kind === "circumference" ? round : `loaded radius ${formatNumber(value)} mm, ${round}`,
    notes,
  });
}

function asRadius(written: Written, radius_mm: number): QuantityReading {
  if (written.kind === "circumference") return asRound(written, 2 * Math.PI * radius_mm, []);
  const round = `${formatNumber((2 * Math.PI * radius_mm) / MM_PER_M)} m a turn`;
  return answer(written, radius_mm, { shown: `loaded radius ${formatNumber(radius_mm)} mm, ${round}` });
}

function sizeFor(written: Written, round_mm: number): number {
  return written.kind === "circumference" ? round_mm : round_mm / (2 * Math.PI);
}

function lengthOf(text: string, bareUnit: string | undefined): number | undefined {
  const number = readNumber(text);
  const unit = number && readUnit("circumference", number.rest.trim(), { bareUnit });
  if (!unit || typeof unit.rule !== "number") return undefined;
  // 1,850 m is no wheel: a decimal comma wherever thousands cannot be
  const size = number.value * unit.rule;
  return size > 5000 && number.decimalComma !== undefined ? number.decimalComma * unit.rule : size;
}

/** `520-13` for `5.20-13`. */
function lostPoint(text: string): string | undefined {
  const found = /^([4-9])(\d0)( ?- ?)(1[0-8])$/.exec(text);
  return found ? `${found[1]}.${found[2]}-${found[4]}` : undefined;
}

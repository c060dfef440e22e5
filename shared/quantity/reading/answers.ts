import { formatNumber } from "../formatNumber.ts";
import { kindInfo, type QuantityKind } from "../kinds/kinds.ts";
import { applyUnit } from "../kinds/unitRule.ts";
import { tidyUnit } from "../tidyText.ts";
import { inUnits, type UnitHabit } from "../writeQuantity.ts";
import { isAllowed, type Likely } from "./likelyMeant.ts";
import type { QuantityOptions, QuantityQuestion, QuantityReading, Refused } from "./reading.ts";

/** Of a value shown in another unit than the job file's; more would be digits that nobody wrote. */
const CONVERTED_DIGITS = 4;

/** One reader's text and what its field says about itself. */
export interface Written {
  readonly kind: QuantityKind;
  /** As typed, outer spaces taken off. */
  readonly typed: string;
  /** In plain characters, for reading. */
  readonly text: string;
  readonly options: QuantityOptions;
}

/** What goes with a value. */
export interface Aside {
  readonly notes?: readonly string[];
  readonly question?: QuantityQuestion | undefined;
  readonly plusMinus?: number | undefined;
  readonly likely?: Likely | undefined;
  /** The value as people read it, where it is not simply number and unit. */
  readonly shown?: string;
  /** Significant figures of the value shown; 12, that is all of them, where nothing was converted. */
  readonly digits?: number;
}

/** The value, if it is within bounds; otherwise why not, and what was likely meant. */
export function answer(written: Written, value: number, aside: Aside = {}): QuantityReading {
  const { kind, typed, options } = written;
  const { units } = options;
  if (!isAllowed(kind, value, options)) {
    const whole = showValue(kind, value, 12, units);
    const isBareInUnits = isConverted(kind, units ?? "metric") && whole.startsWith(`${written.text} `);
    const isSame = sameNumber(typed, value) || written.text === whole || isBareInUnits;
    const found = isSame ? whole : `${typed} = ${aside.shown ?? showValue(kind, value, 3, units)}`;
    return refuse(
      written,
      "quantity-range",
      `${found} is not possible (${bounds(kind, options)})`,
      aside.likely,
      aside.question,
    );
  }
  const shown = aside.shown ?? showValue(kind, value, aside.digits, units);
  const notes = aside.notes ?? [];
  return {
    ok: true,
    unknown: false,
    value: value + 0, // never -0
    ...(aside.plusMinus === undefined ? {} : { plusMinus: aside.plusMinus }),
    understood: written.text === shown ? shown : `${typed} = ${shown}`,
    isAsTyped: isPlainly(written, value, shown),
    notes,
    ...(aside.question ? { question: aside.question } : {}),
  };
}

/** `52 Ah`, or digits alone in the unit that stands beside the field: no comma, nothing converted, nothing turned over. */
function isPlainly({ kind, text, options }: Written, value: number, shown: string): boolean {
  if (text === shown) return true;
  if (!/^[+-]?\d+(\.\d+)?$/.test(text)) return false;
  if (kind === "fraction" || kind === "gradient" || kind === "rate") return `${text} %` === shown;
  const rule = kindInfo(kind).units[tidyUnit(options.bareUnit ?? "")] ?? 1;
  return Math.abs(applyUnit(rule, Number(text)) - value) <= 1e-12 * Math.abs(value);
}

/** A refusal, with a guess at what was meant if there is one. */
export function refuse(
  written: Written,
  code: string,
  message: string,
  likely?: Likely,
  question?: QuantityQuestion,
): Refused {
  const { kind, options } = written;
  const problem = {
    code,
    where: options.label ?? kind,
    message: likely ? `${message}; likely ${explain(kind, likely, options.units)}` : message,
  };
  return { ok: false, problem, ...(likely ? { likely: likely.text } : {}), ...(question ? { question } : {}) };
}

/** `0.4 to 12`, `-60 to 200 °C` */
function bounds(kind: QuantityKind, options: QuantityOptions): string {
  const { min, max } = kindInfo(kind);
  const { units } = options;
  const [from, to] = [showValue(kind, options.min ?? min, 12, units), showValue(kind, options.max ?? max, 12, units)];
  const { unit } = inUnits(kind, 0, units ?? "metric");
  return `${withoutUnit(from, unit)} to ${to}`; // -60 to 200 °C, not -60 °C to 200 °C
}

/** `1480 ± 10 kg` */
export function showBand(
  kind: QuantityKind,
  value: number,
  plusMinus: number,
  digits = 4,
  units: UnitHabit = "metric",
): string {
  const { number, unit } = inUnits(kind, value, units);
  if (isConverted(kind, units)) {
    // By the difference, since a degree of warmth more is not a degree from nought.
    const off = Math.abs(inUnits(kind, value + plusMinus, units).number - number);
    return `${formatNumber(number, CONVERTED_DIGITS)} ± ${formatNumber(off, 2)} ${unit}`;
  }
  const own = kind === "gradient" ? "%" : unit;
  return `${withoutUnit(showValue(kind, value, digits), own)} ± ${showValue(kind, plusMinus, 2)}`;
}

function withoutUnit(text: string, unit: string): string {
  return unit !== "" && text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;
}

/** A value of the kind with its unit, as people read it: in the job file's unit, or that of the reader's habit. */
export function showValue(kind: QuantityKind, value: number, digits = 3, units: UnitHabit = "metric"): string {
  if (isConverted(kind, units)) {
    const { number, unit } = inUnits(kind, value, units);
    return `${formatNumber(number, CONVERTED_DIGITS)} ${unit}`;
  }
  const { unit } = kindInfo(kind);
  if (kind === "fraction" || kind === "gradient" || kind === "rate") return `${formatNumber(100 * value, digits)} %`;
  if (kind === "gearRatio" || kind === "finalDrive" || unit === "") return formatNumber(value, digits);
  return `${formatNumber(value, digits)} ${unit}`;
}

/** Whether a kind is shown in another unit than its own to a reader of this habit. */
function isConverted(kind: QuantityKind, units: UnitHabit): boolean {
  return inUnits(kind, 1, units).unit !== kindInfo(kind).unit;
}

function explain(kind: QuantityKind, likely: Likely, units?: UnitHabit): string {
  const shown = showValue(kind, likely.value, 3, units);
  return likely.text === shown || sameNumber(likely.text, likely.value) ? likely.text : `${likely.text} = ${shown}`;
}

function sameNumber(text: string, value: number): boolean {
  return Number(text) === value;
}

import {
  M_PER_IN,
  MPS_PER_KMH,
  MPS_PER_KNOT,
  MPS_PER_MPH,
  RADPS_PER_RPM,
  ZERO_CELSIUS_K,
} from "../../../shared/units.ts";
import type { ColumnRole, SpeedUnit } from "./logFile.ts";

const M_PER_FT = 12 * M_PER_IN;

/** Factor and offset from a column's unit to SI: value times factor plus offset. */
export interface Scale {
  readonly factor: number;
  readonly offset: number;
}

export const mpsPer: Readonly<Record<SpeedUnit, number>> = {
  kmh: MPS_PER_KMH,
  mph: MPS_PER_MPH,
  mps: 1,
  knots: MPS_PER_KNOT,
};

/** Ways of writing a unit, lower case and without blanks, and the one name we give it. */
const spellings: Readonly<Record<string, readonly string[]>> = {
  kmh: ["km/h", "kmh", "kph", "kmph", "km/hr", "kmperhour", "km.h-1"],
  mph: ["mph", "mi/h", "mileperhour", "milesperhour", "miles/h", "mi/hr"],
  mps: ["m/s", "mps", "m/sec", "ms-1", "ms^-1", "m.s-1", "meterspersecond", "metres/s", "meters/s"],
  knots: ["kn", "kt", "kts", "knot", "knots"],
  m: ["m", "meter", "meters", "metre", "metres", "metermsl", "mmsl"],
  ft: ["ft", "feet", "foot"],
  s: ["s", "sec", "secs", "second", "seconds", "sek", "sekunde", "sekunden", "seconde", "secondes"],
  ms: ["ms", "msec", "millis", "milliseconds", "millisecond"],
  us: ["us", "µs", "μs", "usec", "microseconds"],
  min: ["min", "minute", "minutes", "minuten"],
  V: ["v", "volt", "volts"],
  mV: ["mv"],
  A: ["a", "amp", "amps", "ampere"],
  mA: ["ma"],
  rpm: ["rpm", "1/min", "min-1", "r/min", "u/min"],
  degC: ["°c", "ºc", "c", "degc", "celsius"],
  degF: ["°f", "ºf", "f", "degf", "fahrenheit"],
  K: ["k", "kelvin"],
  deg: ["°", "º", "deg", "degrees", "degree", "decimaldegrees"],
};
const unitOf = new Map(Object.entries(spellings).flatMap(([unit, ways]) => ways.map((way) => [way, unit] as const)));

/** Our name of a unit as people write it, or "" where it is none we know. */
export function unitNamed(text: string): string {
  return unitOf.get(text.toLowerCase().replace(/[\s[\]()]/g, "")) ?? "";
}

/** Letters of a header that are looked at: thousands of brackets would be taken apart in every way there is. */
const LONGEST_HEADER = 200;

/** A header split into its words and its unit: `Speed (km/h)`, `speed [mph]`, `speed_mps`, `Geschwindigkeit km/h`. */
export function splitHeader(header: string): { readonly words: string; readonly unit: string } {
  const text = header.slice(0, LONGEST_HEADER).trim();
  const bracket = /^(.*?)[\s_]*[([{]([^)\]}]*)[)\]}]\s*$/.exec(text);
  if (bracket) {
    const unit = unitNamed(bracket[2] ?? "");
    return { words: plainWords(bracket[1] ?? ""), unit };
  }
  const tail = /^(.*?)(?:[\s_,;/-]+)([^\s_,;]+)$/.exec(text);
  if (tail?.[1] && tail[2] && tail[2].length > 0) {
    const unit = unitNamed(tail[2]);
    if (unit !== "") {
      return { words: plainWords(tail[1]), unit };
    }
  }
  const whole = unitNamed(text);
  return { words: plainWords(text), unit: whole };
}

/** What turns a column's numbers into SI; the identity where the unit is unknown. */
export function scaleOf(role: ColumnRole, unit: string): Scale {
  const scale = (factor: number, offset = 0): Scale => ({ factor, offset });
  switch (role) {
    case "height":
    case "accuracy":
      return unit === "ft" ? scale(M_PER_FT) : scale(1);
    case "packVoltage":
      return unit === "mV" ? scale(1e-3) : scale(1);
    case "packCurrent":
      return unit === "mA" ? scale(1e-3) : scale(1);
    case "motorSpeed":
      return scale(RADPS_PER_RPM);
    case "temperature":
      if (unit === "K") {
        return scale(1);
      }
      return unit === "degF" ? scale(5 / 9, ZERO_CELSIUS_K - (32 * 5) / 9) : scale(1, ZERO_CELSIUS_K);
    default:
      return scale(1);
  }
}

/** Lower case, accents and punctuation gone, words joined by single blanks. */
function plainWords(text: string): string {
  return text
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9/°]+/g, " ")
    .trim();
}

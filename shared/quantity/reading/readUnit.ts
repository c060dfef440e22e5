import { KG_PER_CWT, KG_PER_CWT_SHORT, L_PER_GALLON_IMPERIAL, L_PER_GALLON_US } from "../../units.ts";
import { kindInfo, type QuantityKind } from "../kinds/kinds.ts";
import type { UnitRule } from "../kinds/unitRule.ts";
import { tidyUnit } from "../tidyText.ts";
import type { QuantityOptions } from "./reading.ts";

/** A unit found behind a number. */
export interface UnitRead {
  readonly rule: UnitRule;
  /** Its tidied spelling; empty for the kind's own unit, left out. */
  readonly spelling: string;
  /** Which of two units with this name was meant still has to be asked. */
  readonly asks?: "cwt" | "gallon";
  /** Said to the person where the spelling is a loose one. */
  readonly note?: string;
}

const hundredweights = ["cwt", "hundredweight", "qr", "qtr", "quarter"];
const gallons = ["mpg", "miles/gallon", "mile/gallon", "gal", "gallon", "gallons"];
const loose: Partial<Record<QuantityKind, Readonly<Record<string, string>>>> = {
  pressure: { lb: "lb read as lb/in² (psi)" },
  torque: { "lb/ft": "lb/ft read as lb ft", "ft/lb": "ft/lb read as ft lb" },
  force: { kg: "kg read as the weight of that mass, kgf", lb: "lb read as lbf" },
  mass: { ton: "ton of 2240 lb; 't' is the tonne of 1000 kg" },
};

/**
 * What the text behind a number says about its unit; undefined where it is no unit of the kind. An empty text is the
 * kind's own unit, or the one the field is in. A plural s may stand behind any of them.
 */
export function readUnit(kind: QuantityKind, text: string, options: QuantityOptions): UnitRead | undefined {
  const spelling = tidyUnit(text === "" ? (options.bareUnit ?? "") : text);
  if (text === "" && spelling === "") return { rule: 1, spelling };
  if (text.split("(").length !== text.split(")").length) return undefined;
  const { units } = kindInfo(kind);
  const key = [spelling, spelling.replace(/s$/, "")].find((name) => Object.hasOwn(units, name));
  const rule = key === undefined ? undefined : units[key];
  if (key === undefined || rule === undefined) return undefined;
  const note = loose[kind]?.[key];
  const noted = note === undefined ? {} : { note };
  if (kind === "mass" && hundredweights.includes(key)) {
    if (options.cwt === "100" && typeof rule === "number") {
      return { rule: (rule * KG_PER_CWT_SHORT) / KG_PER_CWT, spelling: key, note: "hundredweight of 100 lb" };
    }
    if (options.cwt === "112") return { rule, spelling: key };
    return { rule, spelling: key, asks: "cwt", note: "hundredweight of 112 lb until it is said which" };
  }
  if (gallons.includes(key)) {
    if (options.gallon === "us") return { rule: inUsGallons(rule), spelling: key, note: "gallon of 3.785 l" };
    if (options.gallon === "imperial") return { rule, spelling: key };
    return { rule, spelling: key, asks: "gallon", note: "gallon of 4.546 l until it is said which" };
  }
  return { rule, spelling: key, ...noted };
}

function inUsGallons(rule: UnitRule): UnitRule {
  const share = L_PER_GALLON_US / L_PER_GALLON_IMPERIAL;
  if (typeof rule === "number") return rule * share;
  return "over" in rule ? { over: rule.over * share } : rule;
}

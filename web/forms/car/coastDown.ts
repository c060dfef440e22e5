import type { Job, Origin } from "../../../shared/job/job.ts";
import { InputError } from "../../../shared/problems.ts";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { readQuantity } from "../../../shared/quantity.ts";
import { MPS_PER_KMH, PA_PER_KPA, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { airDensity_kgpm3, type CoastBand, type CoastDown, readBands, roadLoadFrom } from "../../../sim/index.ts";
import { withGroup } from "../../editing/groupEdits.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { shownQuantity } from "../../fields/shownQuantity.ts";

/** A figure of the day beside the times themselves. */
interface DayFigure {
  readonly kind: QuantityKind;
  readonly label: string;
  readonly min: number;
  readonly max: number;
  /** What counts while the field is empty; nothing where it has to be known. */
  readonly usual?: number;
  readonly usualWords: string;
}

export const dayFigures = {
  mass_kg: { kind: "mass", label: "Mass as it rolled, people aboard", min: 100, max: 20_000, usualWords: "" },
  rotating_ratio: {
    kind: "coefficient",
    label: "Mass counted as, for all that turns",
    min: 1,
    max: 1.5,
    usual: 1.04,
    usualWords: "1.04, wheels and axle in neutral",
  },
  stopwatch_s: {
    kind: "duration",
    label: "A time may be off by",
    min: 0.01,
    max: 10,
    usual: 0.5,
    usualWords: "half a second, by hand",
  },
  air_degC: {
    kind: "temperature",
    label: "Air temperature then",
    min: -30,
    max: 50,
    usual: 20,
    usualWords: "a mild day",
  },
  pressure_kPa: {
    kind: "airPressure",
    label: "Air pressure then",
    min: 50,
    max: 110,
    usual: 100,
    usualWords: "100 kPa",
  },
  wind_kmh: {
    kind: "speed",
    label: "Mean wind along the road",
    min: 0,
    max: 144,
    usual: 0,
    usualWords: "calm",
  },
} as const satisfies Readonly<Record<string, DayFigure>>;
export type DayKey = keyof typeof dayFigures;

/** What the texts of a coast-down come to: problems by field, what is still missing, or the road load. */
export interface ReadCoastDown {
  readonly problems: Readonly<Record<string, string>>;
  /** How each figure of the day was read, by field. */
  readonly understood: Readonly<Record<string, string>>;
  readonly missing: readonly string[];
  readonly bands: readonly CoastBand[];
  readonly found?: CoastDown;
}

/** The standard gravity of the road load rules. [GTR15] */
const GRAVITY_mps2 = 9.81;

/** Reads the times and the day as typed, in the reader's units where a number is bare. */
export function readCoastDown(texts: Readonly<Record<string, string>>, units: UnitHabit): ReadCoastDown {
  const report: Report = { problems: {}, understood: {}, missing: [] };
  const { problems, missing } = report;
  const day = Object.fromEntries(
    (Object.keys(dayFigures) as DayKey[]).map((key) => [key, readFigure(key, texts[key] ?? "", units, report)]),
  ) as Record<DayKey, number>;
  const typed = texts["bands"] ?? "";
  let bands: readonly CoastBand[] = [];
  if (typed.trim() === "") missing.unshift("the times");
  else bands = attempt(problems, () => readBands(typed, "bands")) ?? [];
  if (Object.keys(problems).length > 0 || missing.length > 0) return { ...report, bands };
  const air_K = day.air_degC + ZERO_CELSIUS_K;
  const found = attempt(problems, () =>
    roadLoadFrom(
      bands,
      {
        mass_kg: day.mass_kg,
        rotating_ratio: day.rotating_ratio,
        air_kgpm3: airDensity_kgpm3(air_K, day.pressure_kPa * PA_PER_KPA),
        air_K,
        wind_mps: day.wind_kmh * MPS_PER_KMH,
        gravity_mps2: GRAVITY_mps2,
        stopwatch_s: day.stopwatch_s,
      },
      2,
      "bands",
    ),
  );
  return { ...report, bands, ...(found && { found }) };
}

interface Report {
  readonly problems: Record<string, string>;
  readonly understood: Record<string, string>;
  readonly missing: string[];
}

function readFigure(key: DayKey, text: string, units: UnitHabit, { problems, understood, missing }: Report): number {
  const figure: DayFigure = dayFigures[key];
  const { kind, label, min, max, usual } = figure;
  if (text.trim() === "") {
    if (usual === undefined) missing.push(label.toLowerCase());
    return usual ?? Number.NaN;
  }
  const bareUnit = shownQuantity(kind, undefined, undefined, units).unit;
  const reading = readQuantity(kind, text, { min, max, units, ...(bareUnit !== "" && { bareUnit }) });
  if (reading.ok && !reading.unknown) {
    understood[key] = reading.understood;
    return reading.value;
  }
  problems[key] = reading.ok ? "a value is wanted here" : reading.problem.message;
  return Number.NaN;
}

/** The result of some reading, or its faults under the field of the times. */
function attempt<T>(problems: Record<string, string>, read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems["bands"] = error.problems
      .slice(0, 2)
      .map(({ message }) => message)
      .join("; ");
    return undefined;
  }
}

/** The state with a coast-down as the car's road load, its origin measured and its band that of the stopwatch. */
export function takeCoastDown(state: EditorState, { f0_N, f2_Npmps2, mass_kg }: CoastDown, typed: string): EditorState {
  const perKmh2 = MPS_PER_KMH * MPS_PER_KMH;
  const roadLoad: Job["vehicle"]["roadLoad"] = {
    kind: "coastDown",
    f0_N: Number(f0_N.value.toPrecision(4)),
    f1_Npkmh: 0,
    f2_Npkmh2: Number((f2_Npmps2.value * perKmh2).toPrecision(4)),
    mass_kg,
  };
  const origin = ({ value, high }: CoastDown["f0_N"]): Origin => ({
    from: "measured",
    note: `coast-down, ${typed.trim().replace(/\s*\n\s*/g, "; ")}`.slice(0, 200),
    ...(value > 0 && { plusMinus_frac: Number(Math.min(1, (high - value) / value).toPrecision(2)) }),
  });
  return withGroup(state, "vehicle.roadLoad", roadLoad, {
    f0_N: origin(f0_N),
    f1_Npkmh: { from: "measured", note: "coast-down by a law of two terms" },
    f2_Npkmh2: origin(f2_Npmps2),
    mass_kg: { from: "measured", note: "as it rolled" },
  });
}

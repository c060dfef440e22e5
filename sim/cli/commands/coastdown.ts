import { inputError } from "../../../shared/problems.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH, PA_PER_KPA, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { bandsFromTraces } from "../../plan/coastDown/bandsFromTrace.ts";
import { coastDownNotes } from "../../plan/coastDown/coastDownNotes.ts";
import { readBands } from "../../plan/coastDown/readBands.ts";
import { roadLoadFrom } from "../../plan/coastDown/roadLoadFrom.ts";
import { airDensity_kgpm3 } from "../../vehicle/airDensity.ts";
import type { Banded, CoastBand, CoastDay } from "../../vehicle/coastDown/evaluateCoastDown.ts";
import { hasOption, numberOption, textOption } from "../arguments/optionValue.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { forProgram } from "../arguments/usualOptions.ts";
import type { Command, CommandArguments, Print } from "../command.ts";
import { answerOptions, logAnswers } from "../logs/logAnswers.ts";
import { jsonText } from "../printing/json.ts";
import { wrapText } from "../printing/wrapText.ts";
import { readTraceArgument } from "../roads/readTraceArgument.ts";

const GRAVITY_mps2 = 9.81; // as UN GTR 15
const STOPWATCH_s = 0.5;
const LOGGED_s = 0.2; // of a speed recorded once a second: assumed
const ROTATING = 1.04; // 1.03 to 1.05 in neutral: common practice, no source

export const coastdown: Command = {
  name: "coastdown",
  usage: '(--bands "60-50 mph 9.6 s; 30-20 mph 19.8 s" | LOG...) [--back LOG,...] --mass KG [--terms 2|3] [--json]',
  summary: "road load from a coast-down in neutral, by stopwatch or from logs",
  options: {
    bands: {
      type: "string",
      value: "BANDS",
      help: "times by band; several runs with spaces between, the other way behind a /",
    },
    mass: { type: "string", value: "KG", help: "of the car as it rolled, people aboard" },
    rotating: {
      type: "string",
      value: "RATIO",
      help: "mass with what the rotating parts count for, over the mass; else 1.04",
    },
    air: { type: "string", value: "KG/M3", help: "density of the air; else from temperature and pressure" },
    temperature: { type: "string", value: "DEGC", help: "of the air; else 20 degC" },
    pressure: { type: "string", value: "KPA", help: "of the air; else 100 kPa" },
    wind: { type: "string", value: "SPEED", help: "mean wind along the road, whichever way; else none" },
    stopwatch: { type: "string", value: "S", help: "how far one time may be off; else 0.5 s, 0.2 s of a log" },
    terms: { type: "string", value: "2|3", help: "constant and square (2), or with a linear term too (3); else 2" },
    back: { type: "string", value: "LOG,...", help: "logs of the other direction; those before it are of the one" },
    ...answerOptions,
    json: forProgram,
  },
  run(args, print, warn) {
    const bands = givenBands(args, warn);
    const where = args.positionals.length > 0 ? args.positionals.join(", ") : "--bands";
    const terms = numberOption(args, "terms", { low: 2, high: 3, unit: "terms", isWhole: true }) === 3 ? 3 : 2;
    const found = roadLoadFrom(bands, givenDay(args), terms, where);
    const notes = coastDownNotes(bands, found).map((note) => messageIn(note, "metric"));
    const { f0_N, f1_Npmps, f2_Npmps2, dragArea_m2, rolling_coeff, mass_kg } = found;
    if (hasOption(args, "json")) {
      print(jsonText({ dragArea_m2, rolling_coeff, f0_N, f1_Npmps, f2_Npmps2, mass_kg, notes }));
      return;
    }
    const square = MPS_PER_KMH * MPS_PER_KMH;
    print(
      [
        `drag area ${shown(dragArea_m2)} m², rolling coefficient ${shown(rolling_coeff)}`,
        `f0 ${shown(f0_N)} N, f1 ${shown(times(f1_Npmps, MPS_PER_KMH))} N/(km/h), f2 ${shown(times(f2_Npmps2, square))} N/(km/h)²`,
        `at 20 degC, 100 kPa and calm, for ${n(mass_kg, 4)} kg; ± is what the stopwatch makes (one standard deviation)`,
        ...notes.map((note) => wrapText(note, "- ")),
      ].join("\n"),
    );
  },
};

function givenBands(args: CommandArguments, warn: Print): CoastBand[] {
  const text = textOption(args, "bands");
  const { positionals } = args;
  if ((text === undefined) === (positionals.length === 0)) {
    const found = text === undefined ? "neither bands nor a log" : "bands and a log";
    throw inputError(
      "argument-missing",
      "coastdown",
      `found ${found}, one of the two is wanted: --bands "60-50 mph 9.6 s; 30-20 mph 19.8 s" or LOG...`,
    );
  }
  if (text !== undefined) return readBands(text, "--bands");
  const answers = logAnswers(args);
  const tracesOf = (paths: readonly string[]) => paths.map((path) => readTraceArgument(path, warn, answers));
  const back = (textOption(args, "back") ?? "").split(",").filter((path) => path.trim() !== "");
  const bands = bandsFromTraces(tracesOf(positionals), tracesOf(back));
  if (bands.length > 0) return bands;
  const wanted = "a stretch is wanted in which the car rolls freely and loses 30 km/h or more";
  throw inputError("log-no-coast", positionals.join(", "), `found no coast-down, ${wanted}`);
}

function givenDay(args: CommandArguments): CoastDay {
  const mass_kg = quantityOption(args, "mass", "mass", { min: 100, max: 20_000, label: "a car's mass" });
  if (mass_kg === undefined)
    throw inputError("option-missing", "--mass", "found none, the car's mass as it rolled is wanted: --mass 950");
  const air_degC =
    quantityOption(args, "temperature", "temperature", { min: -30, max: 50, label: "the air's temperature" }) ?? 20;
  const pressure_kPa = quantityOption(args, "pressure", "airPressure") ?? 100;
  const air_K = air_degC + ZERO_CELSIUS_K;
  const isLogged = textOption(args, "bands") === undefined;
  return {
    mass_kg,
    rotating_ratio: numberOption(args, "rotating", { low: 1, high: 1.5, unit: "times the mass" }) ?? ROTATING,
    air_kgpm3:
      numberOption(args, "air", { low: 0.6, high: 1.6, unit: "kg/m3" }) ??
      airDensity_kgpm3(air_K, pressure_kPa * PA_PER_KPA),
    air_K,
    wind_mps: (quantityOption(args, "wind", "speed", { min: 0, max: 40, label: "a wind" }) ?? 0) * MPS_PER_KMH,
    gravity_mps2: GRAVITY_mps2,
    stopwatch_s:
      numberOption(args, "stopwatch", { low: 0.01, high: 10, unit: "s" }) ?? (isLogged ? LOGGED_s : STOPWATCH_s),
  };
}

function times({ value, low, high }: Banded, factor: number): Banded {
  return { value: value * factor, low: low * factor, high: high * factor };
}

function shown({ value, high }: Banded): string {
  return high === value ? n(value) : `${n(value)} ± ${n(high - value, 2)}`;
}

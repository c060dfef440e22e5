import { median } from "simple-statistics";
import { InputError, inputError, type Problem } from "../../shared/problems.ts";
import { formatNumber } from "../../shared/quantity/formatNumber.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { readGpx } from "./gpx/readGpx.ts";
import { readKml } from "./kml/readKml.ts";
import { mpsPer } from "./log/columnUnits.ts";
import { countOf } from "./log/countOf.ts";
import { cutAtEnd } from "./log/cutAtEnd.ts";
import { encodingOf, textStart } from "./log/decodeText.ts";
import { detectFormat } from "./log/detectFormat.ts";
import { FASTEST_CAR_mps } from "./log/fastestCar.ts";
import { hasValues, keptFixes } from "./log/fixes.ts";
import { geodesicLeg } from "./log/geodesicLeg.ts";
import {
  type FormatReading,
  hemispheres,
  type LogFile,
  type LogFormat,
  type Question,
  type ReadLogOptions,
  speedUnits,
} from "./log/logFile.ts";
import { parallelTracks } from "./log/parallelTracks.ts";
import { readIsoMoment } from "./log/readTime.ts";
import { nearestUnit, speedRatio } from "./log/speedUnit.ts";
import { runSteps, type Steps } from "./log/steps.ts";
import { writeFar } from "./log/writeFar.ts";
import { readNmea } from "./nmea/readNmea.ts";
import { readTable } from "./table/readTable.ts";
import { readTcx } from "./tcx/readTcx.ts";

/** Largest file read: four times the week at 1 Hz that a workshop meets, and what a page's memory bears. */
export const LARGEST_LOG_MB = 200;
const BYTES_PER_MB = 1e6;
const SAMPLE_BYTES = 65536;

/**
 * One log, read as far as it can be read, with every problem said. What the file is, is found from its content; the
 * name only says where. Throws `InputError` where the file is no log, or holds no recorded position.
 */
export function readLog(
  name: string,
  bytes: Uint8Array,
  options: ReadLogOptions = {},
  progress?: (fraction_frac: number) => void,
  isCancelled?: () => boolean,
): LogFile {
  return runSteps(readLogInSteps(name, bytes, options), progress, isCancelled);
}

/** The same in slices of about 64 kB of the file, for a worker that must stay open to a cancel. */
export function* readLogInSteps(name: string, bytes: Uint8Array, options: ReadLogOptions = {}): Steps<LogFile> {
  checkOptions(options);
  if (bytes.length > LARGEST_LOG_MB * BYTES_PER_MB) {
    const size = (bytes.length / BYTES_PER_MB).toFixed(0);
    throw inputError(
      "tooLarge",
      name,
      `found ${size} MB, at most ${LARGEST_LOG_MB} MB are read: cut the log into days`,
    );
  }
  const encoding = encodingOf(bytes);
  const format = detectFormat(name, bytes, textStart(bytes, encoding, SAMPLE_BYTES));
  const end = cutAtEnd(bytes, encoding, format);
  const reading =
    format === "table"
      ? yield* readTable(name, end.sound, encoding, options)
      : format === "nmea"
        ? yield* readNmea(name, bytes, encoding, options)
        : yield* xmlReaders[format](name, bytes, encoding);
  if (reading.fixes.count === 0) {
    throw inputError("noFixes", name, emptyWords(reading));
  }
  const { trackNames = [], ...all } = reading;
  const single = format === "table" || format === "nmea" ? all : withOneCar(name, all, trackNames, options);
  const checked = format === "gpx" || format === "tcx" ? withCheckedSpeed(single, options) : single;
  const timed = withoutTimes(name, end.isCut ? withCutEnd(name, format, checked) : checked, options);
  checkInterval(name, timed, options);
  return { file: name, format, ...timed };
}

const xmlReaders = { gpx: readGpx, tcx: readTcx, kml: readKml };

/** Why a file of a known format holds nothing to drive. */
function emptyWords({ badLines, problems }: FormatReading): string {
  const [first] = problems;
  if (badLines === 0) {
    return `found no recorded positions and no speeds in it${first ? `; ${first.message}` : ""}`;
  }
  return `found ${countOf(badLines, "line")} or points and none that can be used; the first: ${first?.message}`;
}

/** Share of the pieces between two rows that must be possible for a car, before an interval is believed. */
const POSSIBLE_frac = 0.5;

/**
 * An interval laid under positions by hand gives speeds; where most of them are beyond any car, the points are those of a route, which
 * lie at its bends. Throws `InputError` then.
 */
function checkInterval(name: string, { fixes, guess }: FormatReading, { interval_s }: ReadLogOptions): void {
  const isTimed = guess.columns.some(({ role }) => role === "time") || guess.columns.length === 0;
  if (interval_s === undefined || isTimed || !hasValues(fixes.latitude_deg)) {
    return;
  }
  const legs_m: number[] = [];
  for (let i = 1; i < fixes.count; i++) {
    const [from, to] = [i - 1, i].map((row) => [fixes.latitude_deg[row], fixes.longitude_deg[row]] as const);
    if (![...from, ...to].some(Number.isNaN)) {
      legs_m.push(geodesicLeg(...from, ...to).length_m);
    }
  }
  const possible = legs_m.filter((leg_m) => leg_m <= FASTEST_CAR_mps * interval_s).length;
  if (legs_m.length === 0 || possible >= POSSIBLE_frac * legs_m.length) {
    return;
  }
  const usual_m = median(legs_m);
  const kmh = Math.round(usual_m / interval_s / MPS_PER_KMH);
  const found = `found points ${writeFar(usual_m)} apart, which ${interval_s} s a row would make ${kmh} km/h`;
  throw inputError("badInterval", name, `${found}: a planned route, whose points lie at bends; type speeds for it`);
}

/** Says that the file stops in the middle of a line; what stands before it was read. */
function withCutEnd(name: string, format: LogFormat, reading: FormatReading): FormatReading {
  const message = "found the end of the file in the middle of a line, read as far as it goes";
  // A cut sentence is counted by its reader; a cut row never came to it.
  const badLines = reading.badLines + (format === "table" ? 1 : 0);
  return { ...reading, badLines, problems: [...reading.problems, { code: "cutFile", where: name, message }] };
}

/** Tracks that run at the same time in different places are of several cars: one of them is read, and which is asked. */
function withOneCar(
  name: string,
  reading: FormatReading,
  trackNames: readonly string[],
  options: ReadLogOptions,
): FormatReading {
  const parallel = parallelTracks(reading.fixes, trackNames, options.vehicle, name);
  if (!parallel) return reading;
  return {
    ...reading,
    fixes: keptFixes(reading.fixes, parallel.isOf),
    questions: [...reading.questions, parallel.question],
  };
}

/** GPX lays m/s down, but extensions are free: where positions speak clearly for another unit, they win, and it is said. */
function withCheckedSpeed(reading: FormatReading, options: ReadLogOptions): FormatReading {
  const { fixes } = reading;
  if (!hasValues(fixes.speed_mps)) {
    return reading;
  }
  const compared = options.speedUnit ? undefined : speedRatio(fixes);
  const unit = options.speedUnit ?? (compared && nearestUnit(compared.ratio)) ?? "mps";
  const evidence = options.speedUnit
    ? "given"
    : unit === "mps" || !compared
      ? "laid down by the format"
      : `the format lays m/s down, but speeds are ${formatNumber(compared.ratio)} times those from positions`;
  const question: Question = {
    name: "speedUnit",
    option: "--speed-unit",
    choices: speedUnits,
    guess: unit,
    evidence,
    decided: true,
  };
  const speed_mps = fixes.speed_mps.map((value) => value * mpsPer[unit]);
  return { ...reading, fixes: { ...fixes, speed_mps }, questions: [...reading.questions, question] };
}

/** A log of positions only, without times, is a planned route, unless the interval of its rows is given. */
function withoutTimes(name: string, reading: FormatReading, options: ReadLogOptions): FormatReading {
  if (reading.hasTimes) {
    return reading;
  }
  const { fixes } = reading;
  if (options.interval_s !== undefined) {
    const interval_s = options.interval_s;
    const start_s = options.date === undefined ? 0 : (readIsoMoment(`${options.date} 00:00`)?.time_s ?? 0);
    const time_s = fixes.time_s.map((_, i) => start_s + i * interval_s);
    return { ...reading, fixes: { ...fixes, time_s }, hasTimes: true };
  }
  const problem: Problem = {
    code: "noTimes",
    where: name,
    message:
      "found positions without times: a planned route, not a drive; type the speeds to drive it at, or give --interval",
  };
  const question: Question = {
    name: "speeds",
    option: "--interval",
    choices: [],
    guess: "",
    evidence: "no times in the file: a planned route",
    decided: false,
  };
  return { ...reading, problems: [...reading.problems, problem], questions: [...reading.questions, question] };
}

function checkOptions(options: ReadLogOptions): void {
  const problems: Problem[] = [];
  const wrong = (where: string, message: string) => problems.push({ code: "badOption", where, message });
  if (options.speedUnit !== undefined && !speedUnits.includes(options.speedUnit)) {
    wrong("--speed-unit", `found "${options.speedUnit}", allowed are ${speedUnits.join(", ")}`);
  }
  if (options.hemisphere !== undefined && !hemispheres.includes(options.hemisphere)) {
    wrong("--hemisphere", `found "${options.hemisphere}", allowed are ${hemispheres.join(", ")}`);
  }
  if (options.interval_s !== undefined && !(options.interval_s >= 0.01 && options.interval_s <= 3600)) {
    wrong("--interval", `found ${options.interval_s} s, allowed are 0.01 to 3600 s`);
  }
  if (options.date !== undefined && readIsoMoment(`${options.date} 00:00`) === undefined) {
    wrong("--date", `found "${options.date}", wanted a day like 2024-05-03`);
  }
  if (problems.length > 0) {
    throw new InputError(problems);
  }
}

import { InputError, inputError, type Problem } from "../../shared/problems.ts";
import { readGpx } from "./gpx/readGpx.ts";
import { mpsPer } from "./log/columnUnits.ts";
import { cutAtEnd } from "./log/cutAtEnd.ts";
import { encodingOf, textStart } from "./log/decodeText.ts";
import { detectFormat } from "./log/detectFormat.ts";
import { hasValues } from "./log/fixes.ts";
import {
  type FormatReading,
  hemispheres,
  type LogFile,
  type LogFormat,
  type Question,
  type ReadLogOptions,
  speedUnits,
} from "./log/logFile.ts";
import { readIsoMoment } from "./log/readTime.ts";
import { nearestUnit, speedRatio } from "./log/speedUnit.ts";
import { runSteps, type Steps } from "./log/steps.ts";
import { readNmea } from "./nmea/readNmea.ts";
import { readTable } from "./table/readTable.ts";

/** Largest file read: four times the week at 1 Hz that a workshop meets, and what a page's memory bears. */
export const LARGEST_LOG_MB = 200;
const BYTES_PER_MB = 1e6;
const SAMPLE_BYTES = 65536;

/**
 * One log, read as far as it can be read, with every problem said. What the file is, is found from its content; the
 * name only says where. Throws `InputError` where the file is no log, or holds not one usable fix.
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
    format === "gpx"
      ? yield* readGpx(name, bytes, encoding)
      : format === "nmea"
        ? yield* readNmea(name, bytes, encoding, options)
        : yield* readTable(name, end.sound, encoding, options);
  if (reading.fixes.count === 0) {
    const first = reading.problems[0];
    const why = first ? `; the first fault: ${first.message}` : "";
    throw inputError("noFixes", name, `found no usable fix among ${reading.badLines} bad ones${why}`);
  }
  const checked = format === "gpx" ? withCheckedSpeed(reading, options) : reading;
  return {
    file: name,
    format,
    ...withoutTimes(name, end.isCut ? withCutEnd(name, format, checked) : checked, options),
  };
}

/** Says that the file stops in the middle of a line; what stands before it was read. */
function withCutEnd(name: string, format: LogFormat, reading: FormatReading): FormatReading {
  const message = "found the end of the file in the middle of a line, read as far as it goes";
  // A cut sentence is counted by its reader; a cut row never came to it.
  const badLines = reading.badLines + (format === "table" ? 1 : 0);
  return { ...reading, badLines, problems: [...reading.problems, { code: "cutFile", where: name, message }] };
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
      : `the format lays m/s down, but speeds are ${compared.ratio.toPrecision(3)} times those from positions`;
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

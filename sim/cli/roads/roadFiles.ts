import { basename } from "node:path";
import { InputError, inputError, type Problem } from "../../../shared/problems.ts";
import { encodingOf, textPieces, textStart } from "../../route/log/decodeText.ts";
import type { LogFile, ReadLogOptions } from "../../route/log/logFile.ts";
import { LARGEST_LOG_MB, readLog } from "../../route/readLog.ts";
import { readTraceCsv } from "../../trace/readTraceCsv.ts";
import type { Trace } from "../../trace/trace.ts";
import { isTraceCsv } from "../../trace/traceColumns.ts";
import { cycleById } from "../cycleFiles.ts";
import { isSameFile, readBytes } from "../files/files.ts";
import { askFor } from "../logs/logAnswers.ts";
import type { Watch } from "../serving/watch.ts";
import { plannedRoute } from "./plannedRoute.ts";

/** What an argument turned out to be: a road that is driven as it is written, or a log that is to be cleaned first. */
export type RoadFile =
  | { readonly kind: "cycle" | "trace" | "route"; readonly argument: string; readonly trace: Trace }
  | { readonly kind: "log"; readonly argument: string; readonly log: LogFile };

/** What a log or a planned route does not say itself. */
interface RoadAnswers extends ReadLogOptions {
  /** Speeds for a planned route, as a person types them: `3 km at 50 km/h, 2 stops a km`. */
  readonly speeds?: string | undefined;
}

const headBytes = 65_536;
const longWork_MB = 3; // about a second of reading and cleaning

/**
 * The roads that arguments name, in their order: ids of cycles, strict traces, logs, planned routes; what a file is, is found from its
 * content. What has a folder or an ending in it is a file. Throws InputError with the faults of all of them: what cannot be read,
 * what leaves a question open that nobody answered (naming the option), and a file named twice.
 */
export function readRoadFiles(args: readonly string[], answers: RoadAnswers, watch: Watch): readonly RoadFile[] {
  const roads: RoadFile[] = [];
  const problems: Problem[] = [];
  const names = args.map((argument) => basename(argument));
  args.forEach((argument, k) => {
    // Two files of one name, in the folders of two days, are told apart by their folders.
    const isAlone = names.indexOf(names[k]) === names.lastIndexOf(names[k]);
    try {
      const road = isFileName(argument)
        ? readFile(argument, isAlone ? names[k] : argument, answers, watch)
        : ({ kind: "cycle", argument, trace: cycleNamed(argument) } as const);
      if (road.kind === "log") {
        const twin = args.slice(0, k).find((other) => isSameFile(other, argument));
        if (twin !== undefined) throw inputError("file-twice", argument, "found this log twice, once is enough");
        problems.push(...openQuestions(road.log));
      }
      roads.push(road);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
    }
  });
  problems.push(...dateForSeveral(roads, answers.date));
  if (problems.length > 0) throw new InputError(problems);
  return roads;
}

/** One day cannot be that of several logs: each would be laid over the others. */
function dateForSeveral(roads: readonly RoadFile[], date: string | undefined): readonly Problem[] {
  if (date === undefined) return [];
  const undated = roads.filter((road) => {
    if (road.kind !== "log") return false;
    const { questions, guess } = road.log;
    // Dates that read two ways do say which day; the answer only chooses the way.
    const hasDates = guess.layout.some((words) => words.includes("date and clock"));
    return !hasDates && questions.some((one) => one.name === "date" && one.guess === date);
  });
  if (undated.length < 2) return [];
  const message = `found ${undated.length} logs without a date, it answers for one; put each one's day into its name, such as drive-${date}.csv`;
  return [{ code: "date-several", where: "--date", message }];
}

/** True for an argument that is meant as a file, not as the id of a cycle. */
export function isFileName(argument: string): boolean {
  return /[\\/.]/.test(argument);
}

function readFile(path: string, name: string, answers: RoadAnswers, watch: Watch): RoadFile {
  const bytes = readBytes(path, LARGEST_LOG_MB);
  const encoding = encodingOf(bytes);
  const head = textStart(bytes, encoding, headBytes);
  if (head.trim() === "" && bytes.length <= headBytes)
    throw inputError(
      "file-empty",
      name,
      "found nothing in it; a speed trace or a log (GPX, TCX, KML, NMEA 0183, CSV, TSV) is wanted",
    );
  if (isTraceCsv(head)) {
    const text = Array.from(textPieces(bytes, encoding), (piece) => piece.text).join("");
    return { kind: "trace", argument: path, trace: readTraceCsv(name, text) };
  }
  const size_MB = bytes.length / 1e6;
  const words = `reading ${name} (${Math.round(size_MB)} MB)`;
  const log = watch(words, size_MB > longWork_MB, (progress) => readLog(name, bytes, answers, progress));
  if (log.hasTimes || log.questions.some((question) => question.name === "interval"))
    return { kind: "log", argument: path, log };
  return { kind: "route", argument: path, trace: plannedRoute(log, answers.speeds) };
}

/** A cycle by its id. Where neither a cycle nor a file has that name, the fault says so of both. */
function cycleNamed(argument: string): Trace {
  try {
    return cycleById(argument);
  } catch (error) {
    if (!(error instanceof InputError) || !error.problems.some(({ code }) => code === "cycle-unknown")) throw error;
    const [problem] = error.problems;
    throw inputError(
      "cycle-unknown",
      argument,
      `${problem?.message}; a file is given with its ending, such as road.csv`,
    );
  }
}

/** Only what the drive itself needs: the sign of currents, say, matters to nobody here. */
export function openQuestions(log: LogFile): readonly Problem[] {
  return log.questions
    .filter(({ decided, option }) => !decided && option !== "")
    .map((question) => ({ code: "log-question", where: log.file, message: askFor(question) }));
}

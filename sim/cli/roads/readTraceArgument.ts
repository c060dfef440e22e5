import { InputError } from "../../../shared/problems.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { ReadLogOptions } from "../../route/log/logFile.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Print } from "../command.ts";
import { cleanedWhole } from "../logs/cleanedWhole.ts";
import { recordedDrives } from "../logs/recordedDrives.ts";
import { watchOn } from "../serving/watch.ts";
import { readRoadFiles } from "./roadFiles.ts";

/**
 * The trace that an argument names: the id of a standard cycle or of a phase, or a file, which is a strict trace or a log. A log is
 * cleaned, its trips driven one after another, and that is said to `warn`. Throws InputError; where a log leaves something open to which
 * `answers` has no answer, the message points to the command that takes it.
 */
export function readTraceArgument(argument: string, warn: Print, answers: ReadLogOptions = {}): Trace {
  const watch = watchOn(warn);
  const [road] = readOne(argument, watch, answers);
  if (road.kind !== "log") return road.trace;
  const drives = recordedDrives([road.log], watch);
  const trace = cleanedWhole(drives);
  const { verdict, reasons } = drives.cleaned.quality;
  const km = formatNumber(characteristics(trace).distance_m / M_PER_KM);
  const count = drives.trips.trips.length;
  warn(
    `${road.log.file}: a log of ${count === 1 ? "1 trip" : `${count} trips`}, ${km} km, cleaned; ${verdict}: ` +
      `${reasons.join("; ")} (trace ${argument} says every repair)`,
  );
  return trace;
}

function readOne(argument: string, watch: ReturnType<typeof watchOn>, answers: ReadLogOptions) {
  try {
    return readRoadFiles([argument], answers, watch);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const asking = new Set(["log-question", "noTimes"]);
    throw new InputError(
      error.problems.map((problem) =>
        asking.has(problem.code)
          ? { ...problem, message: `${problem.message}; trace takes the answer, and writes a road to drive with --out` }
          : problem,
      ),
    );
  }
}

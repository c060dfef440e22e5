import { basename } from "node:path";
import { InputError, type Problem } from "../../../shared/problems.ts";
import { type BuiltCarLogs, builtCarLogs } from "../../route/builtCarLogs.ts";
import type { CleanedLog } from "../../route/clean/report/cleanedLog.ts";
import type { LogFile, ReadLogOptions } from "../../route/log/logFile.ts";
import { LARGEST_LOG_MB, readLog } from "../../route/readLog.ts";
import { type DriveParts, drivePartsOf } from "../../route/trips/drivePartsOf.ts";
import { readBytes } from "../files/files.ts";
import { openQuestions } from "../roads/roadFiles.ts";
import type { Watch } from "../serving/watch.ts";
import type { LogClock } from "./logClock.ts";
import { recordedDrives } from "./recordedDrives.ts";

/** A built car's logs, read and cleaned. */
export interface MeasuredLogs {
  readonly logs: BuiltCarLogs;
  /** Absent where nothing but the pack was logged. */
  readonly drive?: DriveParts & { readonly clock: LogClock; readonly cleaned: CleanedLog };
}

const longWork_MB = 3;

/** Reads the logs of a built car. Throws InputError with the faults of all of them. */
export function measuredLogs(paths: readonly string[], answers: ReadLogOptions, watch: Watch): MeasuredLogs {
  const problems: Problem[] = [];
  const read: LogFile[] = [];
  for (const path of paths) {
    try {
      const bytes = readBytes(path, LARGEST_LOG_MB);
      const size_MB = bytes.length / 1e6;
      const log = watch(`reading ${basename(path)}`, size_MB > longWork_MB, (progress) =>
        readLog(basename(path), bytes, { ...answers, isPackWanted: true }, progress),
      );
      problems.push(...openQuestions(log));
      read.push(log);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new InputError(problems);
  const logs = builtCarLogs(read);
  if (logs.motion.length === 0) return { logs };
  const { cleaned, clock } = recordedDrives(logs.motion, watch);
  return { logs, drive: { ...drivePartsOf(cleaned), clock, cleaned } };
}

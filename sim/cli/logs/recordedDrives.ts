import { InputError, type Problem } from "../../../shared/problems.ts";
import { cleanLog } from "../../route/clean/cleanLog.ts";
import { type RepairEffect, repairEffects } from "../../route/clean/repairEffects.ts";
import type { CleanedLog, RepairKind } from "../../route/clean/report/cleanedLog.ts";
import { type JoinedLogs, joinLogs } from "../../route/joinLogs.ts";
import type { LogFile } from "../../route/log/logFile.ts";
import { findPlaces } from "../../route/trips/findPlaces.ts";
import { splitTrips, type Trips } from "../../route/trips/splitTrips.ts";
import { type Day, summariseDays } from "../../route/trips/summariseDays.ts";
import type { Watch } from "../serving/watch.ts";
import { type LogClock, logClock } from "./logClock.ts";

/** A log cleaned by itself and, where that is asked for, what each repair of it moved. */
interface CleanedFile {
  readonly log: LogFile;
  readonly cleaned: CleanedLog;
  readonly effects?: ReadonlyMap<RepairKind, RepairEffect>;
}

/** Logs of one week as drives. */
export interface RecordedDrives {
  /** Each log as given, cleaned by itself: what was wrong with this file and not with the others. */
  readonly files: readonly CleanedFile[];
  readonly joined: JoinedLogs;
  /** All of them in order of time as one. */
  readonly cleaned: CleanedLog;
  readonly trips: Trips;
  /** Empty where the logs carry no date. */
  readonly days: readonly Day[];
  readonly clock: LogClock;
}

const longWork = 100_000; // fixes that take about a second to clean

/**
 * Logs joined in order of time, cleaned and split into trips and days. Throws InputError, with the faults of all files, for a log
 * that is no drive, and for several that cannot be put in order. With `isWeighed` every log
 * is cleaned again without each of its repairs.
 */
export function recordedDrives(logs: readonly LogFile[], watch: Watch, isWeighed = false): RecordedDrives {
  const joined = joinLogs(logs);
  const clock = logClock(joined, logs);
  const clean = (log: Parameters<typeof cleanLog>[0]) =>
    watch(`cleaning ${log.file}`, log.fixes.count > longWork, (progress) =>
      cleanLog(log, { utcOffset_s: clock.utcOffset_s }, progress),
    );
  const weigh = ({ log, cleaned }: CleanedFile) =>
    watch(`cleaning ${log.file} without each repair`, log.fixes.count > longWork / 10, (progress) => ({
      log,
      cleaned,
      effects: repairEffects(log, cleaned, { utcOffset_s: clock.utcOffset_s }, progress),
    }));
  const files = isWeighed ? cleanEach(logs, clean).map(weigh) : cleanEach(logs, clean);
  const cleaned = files.length === 1 ? files[0].cleaned : clean({ ...joined, file: "all of them" });
  const trips = splitTrips(cleaned);
  const places = findPlaces(trips.parkings, clock.utcOffset_s);
  const days = clock.isDated ? summariseDays(trips, clock.utcOffset_s, places) : [];
  return { files, joined, cleaned, trips, days, clock };
}

function cleanEach(logs: readonly LogFile[], clean: (log: LogFile) => CleanedLog): RecordedDrives["files"] {
  const problems: Problem[] = [];
  const files: { log: LogFile; cleaned: CleanedLog }[] = [];
  for (const log of logs) {
    try {
      files.push({ log, cleaned: clean(log) });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new InputError(problems);
  return files;
}

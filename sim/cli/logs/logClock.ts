import { S_PER_H } from "../../../shared/units.ts";
import type { JoinedLogs } from "../../route/joinLogs.ts";
import type { LogFile } from "../../route/log/logFile.ts";
import { writeClock, writeDate, writeDuration } from "../../route/log/writeTime.ts";
import { guessUtcOffset_s } from "../../route/trips/summariseDays.ts";

/** How moments of a log are written for people and for programs. */
export interface LogClock {
  /** Local time less the log's own, which is UTC where it has a zone. */
  readonly utcOffset_s: number;
  /** False where times count from the log's start. */
  readonly isDated: boolean;
  /** True where times are known to be UTC. */
  readonly isUtc: boolean;
  /** What the clock is and how it is known. */
  readonly words: string;
}

const datedFrom_s = 1e8; // a time before this, early in 1973, is counted from the start of a log, and is no date

/**
 * The clock of logs that were joined: the zone they state; else a guess of it from the longitude, which knows no summer time and
 * says so; else the clock as the file has it.
 */
export function logClock(joined: JoinedLogs, logs: readonly LogFile[]): LogClock {
  const isDated = joined.fixes.time_s.some((time_s) => time_s > datedFrom_s);
  // GPX and NMEA lay UTC down, even where the file does not repeat it.
  const isUtc = isDated && (joined.hasZone || logs.every(({ format }) => format !== "table"));
  if (!isDated) return { utcOffset_s: 0, isDated, isUtc, words: "times count from the log's start" };
  if (!isUtc) return { utcOffset_s: 0, isDated, isUtc, words: "clock as the file has it" };
  if (joined.utcOffset_s !== 0) {
    const words = `clock at ${zone(joined.utcOffset_s)}, as the file states`;
    return { utcOffset_s: joined.utcOffset_s, isDated, isUtc, words };
  }
  const utcOffset_s = guessUtcOffset_s(joined.fixes.longitude_deg);
  const words = `clock at ${zone(utcOffset_s)}, guessed from the longitude; borders and summer time are not in it`;
  const hasPositions = joined.fixes.longitude_deg.some((longitude_deg) => !Number.isNaN(longitude_deg));
  return { utcOffset_s, isDated, isUtc, words: hasPositions ? words : "clock at UTC" };
}

/** `2024-05-03 08:12`, or `after 4 min 5 s` where there is no date. */
export function momentForPeople(time_s: number, clock: LogClock): string {
  if (!clock.isDated) return `after ${writeDuration(time_s)}`;
  return `${writeDate(time_s + clock.utcOffset_s)} ${writeClock(time_s, clock.utcOffset_s).slice(0, 5)}`;
}

/** ISO 8601, with `Z` where the time is known to be UTC; null where there is no date. */
export function momentForPrograms(time_s: number, clock: LogClock): string | null {
  if (!clock.isDated) return null;
  const text = new Date(Math.round(time_s * 1000)).toISOString().replace(".000", "");
  return clock.isUtc ? text : text.replace("Z", "");
}

function zone(utcOffset_s: number): string {
  if (utcOffset_s === 0) return "UTC";
  const minutes = Math.round((Math.abs(utcOffset_s) / S_PER_H) * 60);
  const rest = minutes % 60 === 0 ? "" : `:${String(minutes % 60).padStart(2, "0")}`;
  return `UTC${utcOffset_s < 0 ? "-" : "+"}${Math.floor(minutes / 60)}${rest}`;
}

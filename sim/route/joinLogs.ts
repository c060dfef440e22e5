import { inputError, type Problem } from "../../shared/problems.ts";
import { type ExtraName, extraNames, type Fixes } from "./log/fixes.ts";
import type { LogFile } from "./log/logFile.ts";
import { writeClock, writeDate, writeDuration } from "./log/writeTime.ts";

/** Several logs as one, ready to be cleaned together. */
export interface JoinedLogs {
  readonly file: string;
  readonly fixes: Fixes;
  readonly hasZone: boolean;
  readonly utcOffset_s: number;
  readonly problems: readonly Problem[];
}

/** Before this a log has no date of its own: its time counts from its start. */
const DATED_FROM_s = 1e8;
/** Logs may touch: a new file is often begun a moment before the old one ends. */
const TOUCH_s = 30;

interface Span {
  readonly log: LogFile;
  readonly from_s: number;
  readonly to_s: number;
}

/**
 * Logs of one week in order of time as one log. Where two logs hold the same minutes, the one with fewer fixes a minute
 * gives way there, and it is said: one drive must not count twice. Throws `InputError` where a log among several has no
 * times or no date, since it cannot be put in order.
 */
export function joinLogs(logs: readonly LogFile[]): JoinedLogs {
  const [only] = logs;
  if (!only) {
    throw inputError("noLogs", "logs", "found no log, wanted at least one");
  }
  if (logs.length === 1) {
    return { file: only.file, fixes: only.fixes, hasZone: only.hasZone, utcOffset_s: only.utcOffset_s, problems: [] };
  }
  const spans = logs.map(spanOf);
  const problems: Problem[] = [];
  const givesWay = new Map<Span, (readonly [number, number])[]>();
  spans.forEach((a, i) => {
    for (const b of spans.slice(i + 1)) {
      const [from_s, to_s] = [Math.max(a.from_s, b.from_s), Math.min(a.to_s, b.to_s)];
      if (to_s - from_s <= TOUCH_s || countIn(a, from_s, to_s) === 0 || countIn(b, from_s, to_s) === 0) {
        continue;
      }
      const [kept, left] = countIn(a, from_s, to_s) >= countIn(b, from_s, to_s) ? [a, b] : [b, a];
      givesWay.set(left, [...(givesWay.get(left) ?? []), [from_s, to_s]]);
      const when = `${writeDate(from_s)} ${writeClock(from_s)}`;
      const isMore = countIn(kept, from_s, to_s) > countIn(left, from_s, to_s);
      const message = `found the same ${writeDuration(to_s - from_s)} from ${when} in ${kept.log.file}, which has ${isMore ? "more" : "as many"} fixes there; left out here`;
      problems.push({ code: "sameMinutes", where: left.log.file, message });
    }
  });
  const ordered = [...spans].sort((a, b) => a.from_s - b.from_s);
  return {
    file: ordered.map((span) => span.log.file).join(" + "),
    fixes: joined(ordered, givesWay),
    hasZone: logs.every((log) => log.hasZone),
    utcOffset_s: only.utcOffset_s,
    problems,
  };
}

function spanOf(log: LogFile): Span {
  let from_s = Number.POSITIVE_INFINITY;
  let to_s = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < log.fixes.count; i++) {
    const time_s = log.fixes.time_s[i];
    if (!Number.isNaN(time_s)) {
      from_s = Math.min(from_s, time_s);
      to_s = Math.max(to_s, time_s);
    }
  }
  if (!(from_s > DATED_FROM_s)) {
    const found = Number.isFinite(from_s) ? "times that count from the log's start, without a date" : "no times";
    throw inputError(
      "noDate",
      log.file,
      `found ${found}; among several logs each needs a date: read it alone, or give --date`,
    );
  }
  return { log, from_s, to_s };
}

function countIn(span: Span, from_s: number, to_s: number): number {
  let count = 0;
  for (let i = 0; i < span.log.fixes.count; i++) {
    count += span.log.fixes.time_s[i] >= from_s && span.log.fixes.time_s[i] <= to_s ? 1 : 0;
  }
  return count;
}

function joined(ordered: readonly Span[], givesWay: ReadonlyMap<Span, readonly (readonly [number, number])[]>): Fixes {
  const parts = ordered.map((span) => {
    const spansOut = givesWay.get(span) ?? [];
    const rows: number[] = [];
    for (let i = 0; i < span.log.fixes.count; i++) {
      const time_s = span.log.fixes.time_s[i];
      if (!spansOut.some(([from_s, to_s]) => time_s >= from_s && time_s <= to_s)) {
        rows.push(i);
      }
    }
    return { fixes: span.log.fixes, rows };
  });
  const count = parts.reduce((sum, part) => sum + part.rows.length, 0);
  const gather = (pick: (fixes: Fixes) => Float64Array | undefined) => {
    const column = new Float64Array(count).fill(Number.NaN);
    let at = 0;
    for (const { fixes, rows } of parts) {
      const from = pick(fixes);
      for (const row of rows) {
        column[at++] = from ? from[row] : Number.NaN;
      }
    }
    return column;
  };
  const line = new Uint32Array(count);
  const segment = new Uint32Array(count);
  let at = 0;
  let firstSegment = 0;
  for (const { fixes, rows } of parts) {
    let most = 0;
    for (const row of rows) {
      line[at] = fixes.line[row];
      segment[at++] = firstSegment + fixes.segment[row];
      most = Math.max(most, fixes.segment[row]);
    }
    firstSegment += most + 1;
  }
  const extras: Partial<Record<ExtraName, Float64Array>> = {};
  for (const name of extraNames) {
    if (parts.some((part) => part.fixes.extras[name])) {
      extras[name] = gather((fixes) => fixes.extras[name]);
    }
  }
  return {
    count,
    time_s: gather((fixes) => fixes.time_s),
    latitude_deg: gather((fixes) => fixes.latitude_deg),
    longitude_deg: gather((fixes) => fixes.longitude_deg),
    speed_mps: gather((fixes) => fixes.speed_mps),
    elevation_m: gather((fixes) => fixes.elevation_m),
    accuracy_m: gather((fixes) => fixes.accuracy_m),
    line,
    segment,
    extras,
  };
}

import { InputError, type Problem } from "../../../shared/problems.ts";
import type { CleanedLog, LogFile, RepairKind, Routes } from "../../../sim/index.ts";
import type { CycleKinds } from "./cycleKinds.ts";
import { driveClock } from "./driveClock.ts";
import { driveOf, type Sorted, sortOut } from "./driveOf.ts";
import type { Brought, FileReading, LogSetting, PlannedRoute } from "./roadsApi.ts";

/** A file as it was brought, read under the answers given. */
export interface ReadFile {
  readonly file: File;
  readonly answers: string;
  readonly log: LogFile;
}

/** What was cleaned and how, and what each repair that is left out had moved. */
interface Cleaned {
  readonly log: CleanedLog;
  readonly how: string;
  readonly off: readonly RepairKind[];
  readonly moved: Moved;
}

type Moved = Readonly<Partial<Record<RepairKind, string>>>;

/** All that is known of what was brought; replaced as a whole, and only when the work on the next one is done. */
export interface Held {
  readonly read: readonly ReadFile[];
  readonly leftOut: readonly Problem[];
  readonly joined?: ReturnType<Routes["joinLogs"]>;
  readonly cleaned?: Cleaned;
  readonly sorted?: Sorted;
  readonly brought: Brought;
}

/** What settling asks of the session: cleaning in slices, a word on what is being done, and the cycles to compare with. */
export interface Settling {
  readonly clean: (steps: ReturnType<Routes["cleanLogInSteps"]>) => Promise<CleanedLog>;
  readonly sorting: () => void;
  readonly cycleKinds: () => Promise<CycleKinds>;
}

/**
 * Joins, cleans and splits what was read, as far as the setting has changed since `before`. A single file without times is a
 * planned route. What cannot be made a drive is no refusal: what a file leaves open can be answered only where its
 * questions are seen.
 */
export async function settleLogs(
  routes: Routes,
  read: readonly ReadFile[],
  leftOut: readonly Problem[],
  setting: LogSetting,
  work: Settling,
  before?: Held,
): Promise<Held> {
  const files = read.map(({ log }) => readingOf(log));
  const logs = read.map(({ log }) => log);
  const isSame = before !== undefined && read.every((each, i) => each === before.read[i]);
  const [only] = logs;
  try {
    if (only && logs.length === 1 && !only.hasTimes) {
      return { read, leftOut, brought: { files, leftOut, outcome: plannedRoute(routes, only) } };
    }
    const joined = isSame && before.joined ? before.joined : routes.joinLogs(logs);
    const clock = driveClock(routes, joined, setting);
    const how = JSON.stringify([setting.off, setting.utcOffset_s ?? 0]);
    const known = isSame && before.cleaned?.how === how ? before.cleaned.log : undefined;
    const options = { off: setting.off, utcOffset_s: clock.offset_s };
    const log = known ?? (await work.clean(routes.cleanLogInSteps(joined, options)));
    const cleaned = {
      log,
      how,
      off: setting.off,
      moved: movedBy(routes, log, setting.off, isSame ? before : undefined),
    };
    work.sorting();
    const sorted = sortOut(routes, log, setting.parkedLonger_s, clock.offset_s);
    const kinds = sorted.found.trips.length === 0 ? [] : await work.cycleKinds();
    const outcome = { ...driveOf(routes, sorted, joined.problems, clock, kinds), moved: cleaned.moved };
    return { read, leftOut, joined, cleaned, sorted, brought: { files, leftOut, outcome } };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { read, leftOut, brought: { files, leftOut, outcome: { kind: "unclean", problems: error.problems } } };
  }
}

/** What each repair that is left out had moved: known where the log was cleaned with it and all others just before. */
function movedBy(routes: Routes, log: CleanedLog, off: readonly RepairKind[], before: Held | undefined): Moved {
  const earlier = before?.cleaned;
  if (!earlier) return {};
  const moved = Object.fromEntries(
    Object.entries(earlier.moved).filter(([kind]) => off.some((each) => each === kind)),
  ) as Moved;
  const left = off.filter((kind) => !earlier.off.includes(kind));
  const [kind] = left;
  if (kind === undefined || left.length > 1 || off.length !== earlier.off.length + 1) return moved;
  const effect = routes.repairEffect(earlier, { log, off });
  return {
    ...moved,
    [kind]: routes.effectWords(effect, earlier.log.series.distance_m[earlier.log.series.count - 1] ?? 0),
  };
}

/** What the page is given of one file. */
function readingOf({ fixes, ...others }: LogFile): FileReading {
  const hasSpeeds = fixes.speed_mps.some((speed_mps) => !Number.isNaN(speed_mps));
  return { ...others, count: fixes.count, hasSpeeds };
}

function plannedRoute(routes: Routes, log: LogFile): PlannedRoute {
  const { distance_m, climb_m } = routes.routeShape(log);
  return { kind: "route", distance_m, ...(climb_m !== undefined && { climb_m }) };
}

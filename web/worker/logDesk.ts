// The room for logs, without the thread around it. Past 200 lines: what was brought, and every question about it.
import { InputError, inputError, type Problem } from "../../shared/problems.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import type { CleanedLog, LogFile, Routes, Trace, TypedDriving } from "../../sim/index.ts";
import { driveOf, type Sorted, sortOut } from "./driveOf.ts";
import { pieceTrips, pieceView } from "./pieceView.ts";
import { roadOfTrace } from "./roadOfTrace.ts";
import type { Answer, Brought, CycleRequest, LogSetting, MadeRoad, Piece, RoadsApi, Tell } from "./roadsApi.ts";
import { stepped } from "./stepped.ts";

interface ReadFile {
  readonly file: File;
  readonly answers: string;
  readonly log: LogFile;
}

/** All that is known of what was brought; replaced as a whole, and only when the work on the next one is done. */
interface Held {
  readonly read: readonly ReadFile[];
  readonly leftOut: readonly Problem[];
  readonly joined?: ReturnType<Routes["joinLogs"]>;
  readonly cleaned?: { readonly log: CleanedLog; readonly how: string };
  readonly sorted?: Sorted;
  readonly brought: Brought;
}

const GIVEN_UP = Symbol("given up");

/** `routes` is fetched when first needed; `cycleText` brings the table of a standard cycle. */
export function createLogDesk(
  routes: () => Promise<Routes>,
  cycleText: (cycle: string) => Promise<Record<string, string>>,
): RoadsApi {
  let held: Held | undefined;
  let isCancelled = false;

  async function answer<T>(work: (room: Routes) => Promise<T>): Promise<Answer<T>> {
    isCancelled = false;
    try {
      return { kind: "done", value: await work(await routes()) };
    } catch (error) {
      if (error === GIVEN_UP) return { kind: "cancelled" };
      if (error instanceof InputError) return { kind: "refused", problems: error.problems };
      throw error;
    }
  }

  const run = async <T>(steps: Parameters<typeof stepped<T>>[0], tell: Tell, words: string): Promise<T> => {
    tell(words, 0);
    let told = 0;
    const tellPercent = (share_frac: number) => {
      const percent = Math.floor(100 * share_frac);
      if (percent !== told) tell(words, share_frac);
      told = percent;
    };
    const done = await stepped(steps, tellPercent, () => isCancelled);
    if (!done) throw GIVEN_UP;
    return done.value;
  };

  async function readFile(room: Routes, file: File, options: LogSetting["answers"][number], tell: Tell) {
    if (file.size > room.LARGEST_LOG_MB * 1e6) {
      const message = `found ${Math.round(file.size / 1e6)} MB, at most ${room.LARGEST_LOG_MB} MB are read: cut the log into days`;
      throw inputError("tooLarge", file.name, message);
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    return run(room.readLogInSteps(file.name, bytes, options), tell, `Reading ${file.name}`);
  }

  /** Joins, cleans and splits, as far as the setting has changed since `before`. */
  async function settle(
    room: Routes,
    read: readonly ReadFile[],
    leftOut: readonly Problem[],
    setting: LogSetting,
    tell: Tell,
    before?: Held,
  ): Promise<Brought> {
    const files = read.map(({ log: { fixes, ...others } }) => ({
      ...others,
      count: fixes.count,
      hasSpeeds: fixes.speed_mps.some((speed_mps) => !Number.isNaN(speed_mps)),
    }));
    const logs = read.map(({ log }) => log);
    const isSame = before !== undefined && read.every((each, i) => each === before.read[i]);
    const [only] = logs;
    try {
      if (only && logs.length === 1 && !only.hasTimes) {
        const { distance_m, profile } = room.routeShape(only);
        const climb_m = profile && climbOf(profile.elevation_m);
        const brought: Brought = {
          ...{ files, leftOut },
          outcome: { kind: "route", distance_m, ...(climb_m !== undefined && { climb_m }) },
        };
        held = { read, leftOut, brought };
        return brought;
      }
      const joined = isSame && before?.joined ? before.joined : room.joinLogs(logs);
      const offset = setting.utcOffset_s ?? 0;
      const how = JSON.stringify([setting.off, offset]);
      const cleaned =
        isSame && before?.cleaned?.how === how
          ? before.cleaned.log
          : await run(
              room.cleanLogInSteps(joined, {
                off: setting.off,
                utcOffset_s: clockOffset_s(room, joined, setting).offset_s,
              }),
              tell,
              "Cleaning",
            );
      tell("Sorting out the trips", 0);
      const clock = clockOffset_s(room, joined, setting);
      const sorted = sortOut(room, cleaned, setting.parkedLonger_s, clock.offset_s);
      const kinds = sorted.found.trips.length === 0 ? [] : await cycleKinds(room);
      const brought: Brought = { files, leftOut, outcome: driveOf(room, sorted, joined.problems, clock, kinds) };
      if (isCancelled) throw GIVEN_UP;
      held = { read, leftOut, joined, cleaned: { log: cleaned, how }, sorted, brought };
      return brought;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      // What a file leaves open can be answered only where its questions are seen.
      const brought: Brought = { files, leftOut, outcome: { kind: "unclean", problems: error.problems } };
      held = { read, leftOut, brought };
      return brought;
    }
  }

  let kinds: Promise<Parameters<Routes["standardCycleLike"]>[1]> | undefined;
  function cycleKinds(room: Routes) {
    kinds ??= Promise.all(
      room.standardCycles.map(async ({ id }) => ({
        id,
        characteristics: room.characteristics(room.cycleTrace(id, await cycleText(id))),
      })),
    );
    return kinds;
  }

  const sortedTrips = () => {
    if (!held?.sorted) throw inputError("noLog", "road", "found no log to make a road of, bring one first");
    return held.sorted;
  };
  const made = (work: (room: Routes) => Promise<Trace> | Trace, title: string): Promise<Answer<MadeRoad>> =>
    answer(async (room) => heldToJob(roadOfTrace(await work(room), title)));

  return {
    bring: (files, setting, tell) =>
      answer(async (room) => {
        const read: ReadFile[] = [];
        const leftOut: Problem[] = [];
        for (const file of files) {
          try {
            const options = setting.answers[read.length] ?? {};
            read.push({ file, answers: JSON.stringify(options), log: await readFile(room, file, options, tell) });
          } catch (error) {
            if (!(error instanceof InputError)) throw error;
            leftOut.push(...error.problems);
          }
        }
        if (read.length === 0) throw new InputError(leftOut);
        return settle(room, read, leftOut, setting, tell);
      }),
    again: (setting, tell) =>
      answer(async (room) => {
        const before = held;
        if (!before) throw inputError("noLog", "road", "found no log, bring one first");
        const read: ReadFile[] = [];
        for (const [i, known] of before.read.entries()) {
          const options = setting.answers[i] ?? {};
          const answers = JSON.stringify(options);
          const isSame = answers === known.answers;
          read.push(isSame ? known : { ...known, answers, log: await readFile(room, known.file, options, tell) });
        }
        return settle(room, read, before.leftOut, setting, tell, before);
      }),
    async cancel() {
      isCancelled = true;
    },
    view: (piece: Piece) => answer(async () => pieceView(sortedTrips(), piece)),
    roadOf: (piece: Piece, title) =>
      made((room) => room.wholeTrace(pieceTrips(sortedTrips(), piece), "log", title), title),
    routeRoad: (speed_kmh: number, stopsPerKm: number, driving: TypedDriving, title) =>
      made((room) => {
        const log = held?.read[0]?.log;
        if (!log) throw inputError("noLog", "road", "found no planned route, bring one first");
        const { distance_m, profile } = room.routeShape(log);
        const legs = [{ distance_m, speed_mps: speed_kmh * MPS_PER_KMH, stopsPerKm }];
        const trace = room.typedRoad(legs, driving, "route", title);
        return profile ? room.layHillsUnder(trace, profile) : trace;
      }, title),
    typedRoad: (text: string, driving: TypedDriving, title) =>
      made((room) => room.typedRoad(room.readTypedRoad(text), driving, "typed", title), title),
    cycleRoad: (request: CycleRequest) =>
      answer(async (room) => heldToJob(cycleRoad(room, request, await cycleText(request.cycle)))),
  };
}

/**
 * A road that the reader of jobs takes, or its InputError: a week's samples take half a second to check, which the page's
 * thread does not have.
 */
async function heldToJob(made: MadeRoad): Promise<MadeRoad> {
  const { readRoad } = await import("../../shared/job/readJob.ts");
  const { title } = readRoad({ ...made.road, id: "road" });
  return { ...made, road: { ...made.road, title } };
}

/** A cycle once stays a cycle in the job, with hills where any are laid under; repeated, it becomes a trace. */
function cycleRoad(room: Routes, request: CycleRequest, texts: Record<string, string>): MadeRoad {
  const { cycle, title, distance_km, hills } = request;
  const once = room.cycleTrace(cycle, texts);
  const driven = distance_km === undefined ? once : room.repeatCycleToDistance(once, distance_km * 1000);
  const profile = hills && {
    distance_m: Float64Array.from(hills.distance_km, (each_km) => each_km * 1000),
    elevation_m: Float64Array.from(hills.elevation_m),
  };
  const whole = profile ? room.layHillsUnder(driven, profile) : driven;
  const made = roadOfTrace(whole, title);
  if (distance_km !== undefined) return made;
  const under = made.road.hills;
  return { ...made, road: { kind: "cycle", title, cycle, ...(under && { hills: under }) } };
}

/** The clock of the drive, and where it comes from. */
export interface Clock {
  readonly offset_s: number;
  readonly from: string;
}

/**
 * Local time less UTC: as said, as the file states it, none where its times are local already, this computer's own
 * where that fits the place driven, else whole hours by the longitude.
 */
function clockOffset_s(room: Routes, joined: ReturnType<Routes["joinLogs"]>, setting: LogSetting): Clock {
  if (setting.utcOffset_s !== undefined) return { offset_s: setting.utcOffset_s, from: "as set here" };
  if (!joined.hasZone) return { offset_s: 0, from: "the log's times are local already" };
  if (joined.utcOffset_s !== 0) return { offset_s: joined.utcOffset_s, from: "written in the log" };
  const byPlace_s = room.guessUtcOffset_s(joined.fixes.lon_deg);
  const first_s = joined.fixes.time_s.find((time_s) => !Number.isNaN(time_s)) ?? 0;
  const here_s = -60 * new Date(first_s * 1000).getTimezoneOffset();
  if (Math.abs(here_s - byPlace_s) <= 5400) return { offset_s: here_s, from: "a guess: this computer's own clock" };
  return { offset_s: byPlace_s, from: "a guess by the longitude" };
}

function climbOf(elevation_m: Float64Array): number {
  let climb_m = 0;
  for (let i = 1; i < elevation_m.length; i++) climb_m += Math.max(0, elevation_m[i] - elevation_m[i - 1]);
  return climb_m;
}

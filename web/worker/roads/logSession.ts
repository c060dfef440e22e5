// The work on logs, without the thread around it.
import { InputError, inputError, type Problem } from "../../../shared/problems.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { type Measuring, type Routes, roadTrace, type Trace, type TypedDriving } from "../../../sim/index.ts";
import { pieceTrips, pieceView } from "../pieceView.ts";
import { stepped } from "../stepped.ts";
import { answerOf } from "./answerOf.ts";
import { createCycleKinds } from "./cycleKinds.ts";
import { cycleRoad } from "./cycleRoad.ts";
import { heldToJob } from "./heldToJob.ts";
import { createMeasuredSession, type MeasuredWork } from "./measuredSession.ts";
import { roadOfTrace } from "./roadOfTrace.ts";
import type { Answer, Brought, CycleRequest, LogSetting, MadeRoad, Piece, Progress, RoadsApi } from "./roadsApi.ts";
import { type Held, type ReadFile, settleLogs } from "./settleLogs.ts";

const BYTES_PER_MB = 1e6;
const GIVEN_UP = Symbol("given up");

type IsCancelled = () => boolean;

/** `routes` is fetched when first needed; `cycleText` brings the table of a standard cycle. */
export function createLogSession(
  routes: () => Promise<Routes>,
  cycleText: (cycle: string) => Promise<Record<string, string>>,
  measuring: () => Promise<Measuring>,
): Omit<RoadsApi, "job"> {
  let held: Held | undefined;
  /** Counts what was asked to be given up: whatever began before the latest of it ends without an answer. */
  let cancels = 0;
  const cycleKinds = createCycleKinds(cycleText);
  const measured = createMeasuredSession();

  async function answer<T>(work: (routes: Routes, isCancelled: IsCancelled) => Promise<T>): Promise<Answer<T>> {
    const before = cancels;
    try {
      return await answerOf(async () => work(await routes(), () => cancels !== before));
    } catch (error) {
      if (error === GIVEN_UP) return { kind: "cancelled" };
      throw error;
    }
  }

  const run = async <T>(
    steps: Parameters<typeof stepped<T>>[0],
    onProgress: Progress,
    words: string,
    isCancelled: IsCancelled,
  ): Promise<T> => {
    onProgress(words, 0);
    let reported = 0;
    const onShare = (share_frac: number) => {
      const percent = Math.floor(100 * share_frac);
      if (percent !== reported) onProgress(words, share_frac);
      reported = percent;
    };
    const done = await stepped(steps, onShare, isCancelled);
    if (!done) throw GIVEN_UP;
    return done.value;
  };

  async function readFile(
    routes: Routes,
    file: File,
    options: LogSetting["answers"][number],
    onProgress: Progress,
    isCancelled: IsCancelled,
  ) {
    if (file.size > routes.LARGEST_LOG_MB * BYTES_PER_MB) {
      const found = `found ${Math.round(file.size / BYTES_PER_MB)} MB`;
      throw inputError(
        "tooLarge",
        file.name,
        `${found}, at most ${routes.LARGEST_LOG_MB} MB are read: cut the log into days`,
      );
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    return run(routes.readLogInSteps(file.name, bytes, options), onProgress, `Reading ${file.name}`, isCancelled);
  }

  async function settle(
    routes: Routes,
    read: readonly ReadFile[],
    leftOut: readonly Problem[],
    setting: LogSetting,
    onProgress: Progress,
    isCancelled: IsCancelled,
    before?: Held,
  ): Promise<Brought> {
    const work = {
      clean: (steps: ReturnType<Routes["cleanLogInSteps"]>) => run(steps, onProgress, "Cleaning", isCancelled),
      sorting: () => onProgress("Sorting out the trips", 0),
      cycleKinds: () => cycleKinds(routes),
    };
    const next = await settleLogs(routes, read, leftOut, setting, work, before);
    if (isCancelled()) throw GIVEN_UP;
    held = next;
    return next.brought;
  }

  const sortedTrips = () => {
    if (!held?.sorted) throw inputError("noLog", "road", "found no log to make a road of, bring one first");
    return held.sorted;
  };
  const made = (work: (routes: Routes) => Promise<Trace> | Trace, title: string): Promise<Answer<MadeRoad>> =>
    answer(async (routes) => heldToJob(roadOfTrace(await work(routes), title)));

  return {
    bring: (files, setting, onProgress) =>
      answer(async (routes, isCancelled) => {
        const read: ReadFile[] = [];
        const leftOut: Problem[] = [];
        for (const file of files) {
          try {
            const options = setting.answers[read.length] ?? {};
            read.push({
              file,
              answers: JSON.stringify(options),
              log: await readFile(routes, file, options, onProgress, isCancelled),
            });
          } catch (error) {
            if (!(error instanceof InputError)) throw error;
            leftOut.push(...error.problems);
          }
        }
        if (read.length === 0) throw new InputError(leftOut);
        return settle(routes, read, leftOut, setting, onProgress, isCancelled);
      }),
    again: (setting, onProgress) =>
      answer(async (routes, isCancelled) => {
        const before = held;
        if (!before) throw inputError("noLog", "road", "found no log, bring one first");
        const read: ReadFile[] = [];
        for (const [i, known] of before.read.entries()) {
          const options = setting.answers[i] ?? {};
          const answers = JSON.stringify(options);
          const isSame = answers === known.answers;
          read.push(
            isSame
              ? known
              : { ...known, answers, log: await readFile(routes, known.file, options, onProgress, isCancelled) },
          );
        }
        return settle(routes, read, before.leftOut, setting, onProgress, isCancelled, before);
      }),
    async cancel() {
      cancels += 1;
    },
    async discard() {
      cancels += 1;
      held = undefined;
      measured.forget();
    },
    measured: (files, request, onProgress) =>
      answer(async (routes, isCancelled) => {
        const work: MeasuredWork = {
          read: (file) => readFile(routes, file, { isPackWanted: true }, onProgress, isCancelled),
          clean: (steps) => run(steps, onProgress, "Cleaning", isCancelled),
          comparing: () => onProgress("Driving the same drive by the model", 0),
          roadTrace: async (road) => roadTrace(road, road.kind === "cycle" ? await cycleText(road.cycle) : {}),
        };
        const outcome = await measured.hold(routes, await measuring(), files, request, work);
        if (isCancelled()) throw GIVEN_UP;
        return outcome;
      }),
    view: (piece: Piece) => answer(async () => pieceView(sortedTrips(), piece)),
    roadOf: (piece: Piece, title) =>
      made((routes) => {
        const sorted = sortedTrips();
        const trips = pieceTrips(sorted, piece);
        const spread = routes.spreadOfTrips(sorted.cleaned, trips);
        return { ...routes.wholeTrace(trips, "log", title), ...(spread && { spread }) };
      }, title),
    routeRoad: (speed_kmh: number, stopsPerKm: number, driving: TypedDriving, title) =>
      made((routes) => {
        const log = held?.read[0]?.log;
        if (!log) throw inputError("noLog", "road", "found no planned route, bring one first");
        const { distance_m, profile } = routes.routeShape(log);
        const legs = [{ distance_m, speed_mps: speed_kmh * MPS_PER_KMH, stopsPerKm }];
        const trace = routes.typedRoad(legs, driving, "route", title);
        return profile ? routes.layHillsUnder(trace, profile) : trace;
      }, title),
    typedRoad: (text: string, driving: TypedDriving, title) =>
      made((routes) => routes.typedRoad(routes.readTypedRoad(text), driving, "typed", title), title),
    cycleRoad: (request: CycleRequest) =>
      answer(async (routes) => heldToJob(cycleRoad(routes, request, await cycleText(request.cycle)))),
  };
}

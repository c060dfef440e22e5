import { fetchPart } from "../fetchPart.ts";
import { answerOf } from "./answerOf.ts";
import type { Answer, RoadsApi } from "./roadsApi.ts";

type LogWork = Omit<RoadsApi, "job">;

/** The work on logs and roads, once the first question has asked for it. */
let coming: Promise<LogWork> | undefined;

async function fetchWork(): Promise<LogWork> {
  return (await fetchPart(() => import("./logWork.ts"))).logWork;
}

/** Puts a question to the work on logs, which is fetched with the first one; refused where it cannot be had. */
async function ask<T>(question: (work: LogWork) => Promise<Answer<T>>): Promise<Answer<T>> {
  coming ??= fetchWork();
  const work = coming;
  const had = await answerOf(() => work);
  return had.kind === "done" ? question(had.value) : had;
}

/** Passes something on to the work on logs, unless nothing was ever asked of it. */
async function pass(what: (work: LogWork) => Promise<void>): Promise<void> {
  const work = await coming?.catch(() => undefined);
  if (work) await what(work);
}

/** All that is asked of a client's logs and of making roads. */
export const roads: RoadsApi = {
  bring: (...asked) => ask((work) => work.bring(...asked)),
  again: (...asked) => ask((work) => work.again(...asked)),
  cancel: () => pass((work) => work.cancel()),
  discard: () => pass((work) => work.discard()),
  view: (piece) => ask((work) => work.view(piece)),
  roadOf: (...asked) => ask((work) => work.roadOf(...asked)),
  routeRoad: (...asked) => ask((work) => work.routeRoad(...asked)),
  typedRoad: (...asked) => ask((work) => work.typedRoad(...asked)),
  cycleRoad: (request) => ask((work) => work.cycleRoad(request)),
  measured: (...asked) => ask((work) => work.measured(...asked)),
  job: (file) =>
    answerOf(async () => {
      const { readJobFile } = await fetchPart(() => import("../../store/files/readJobFile.ts")); // seldom asked for, and a log needs it only at its end
      return readJobFile(file);
    }),
};

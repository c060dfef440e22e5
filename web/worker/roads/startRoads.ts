import { proxy } from "comlink";
import type { Life, LivingWorker } from "../livingWorker.ts";
import type { WorkerApi } from "../workerApi.ts";
import type { Answer, LogSetting, Progress, RoadsApi } from "./roadsApi.ts";

/** The logs that a worker holds: a new one is given them again before it is asked about them. */
interface Held {
  readonly files: readonly File[];
  readonly setting: LogSetting;
  readonly life: Life<WorkerApi>;
}

/** What is asked of logs and roads, with the worker that studies; a log outlives the worker that read it. */
export function startRoads(worker: LivingWorker<WorkerApi>): RoadsApi {
  let held: Held | undefined;

  const ask = async <T>(question: (life: Life<WorkerApi>) => Promise<Answer<T>>): Promise<Answer<T>> => {
    const answer = await worker.ask(question);
    // A worker that could not fetch a part never can.
    if (answer.kind === "refused" && answer.problems.some(({ code }) => code === "notFetched")) worker.renew();
    return answer;
  };
  const aboutLogs = <T>(question: (api: Life<WorkerApi>["api"]) => Promise<Answer<T>>) =>
    ask(async (life) => {
      if (held && held.life !== life) {
        const { files, setting } = held;
        await life.api.bring(
          files,
          setting,
          proxy(() => {}),
        );
        held = { files, setting, life };
      }
      return question(life.api);
    });

  return {
    bring: (files, setting, onProgress: Progress) =>
      ask(async (life) => {
        const answer = await life.api.bring(files, setting, proxy(onProgress));
        if (answer.kind === "done") held = { files, setting, life };
        return answer;
      }),
    again: (setting, onProgress) => aboutLogs((api) => api.again(setting, proxy(onProgress))),
    cancel: () => worker.ask(({ api }) => api.cancel()),
    async discard() {
      held = undefined;
      await worker.ask(({ api }) => api.discard());
    },
    view: (piece) => aboutLogs((api) => api.view(piece)),
    roadOf: (piece, title) => aboutLogs((api) => api.roadOf(piece, title)),
    routeRoad: (...request) => aboutLogs((api) => api.routeRoad(...request)),
    typedRoad: (...request) => ask(({ api }) => api.typedRoad(...request)),
    cycleRoad: (request) => ask(({ api }) => api.cycleRoad(request)),
    measured: (files, request, onProgress) => ask(({ api }) => api.measured(files, request, proxy(onProgress))),
    job: (file) => ask(({ api }) => api.job(file)),
  };
}

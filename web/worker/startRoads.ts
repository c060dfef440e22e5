import { proxy, type Remote, wrap } from "comlink";
import type { RoadsApi } from "./roadsApi.ts";
import { roadsWorker } from "./workersBeside.ts";

/** The room for logs, in a worker of its own that starts with the first question. */
export function startRoads(): RoadsApi {
  let worker: Remote<RoadsApi> | undefined;
  const room = () => {
    worker ??= wrap<RoadsApi>(roadsWorker("roads"));
    return worker;
  };
  return {
    bring: (files, setting, tell) => room().bring(files, setting, proxy(tell)),
    again: (setting, tell) => room().again(setting, proxy(tell)),
    cancel: () => room().cancel(),
    view: (piece) => room().view(piece),
    roadOf: (piece, title) => room().roadOf(piece, title),
    routeRoad: (...request) => room().routeRoad(...request),
    typedRoad: (...request) => room().typedRoad(...request),
    cycleRoad: (request) => room().cycleRoad(request),
    job: (file) => room().job(file),
  };
}

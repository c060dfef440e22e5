import type { Trace } from "../../../sim/index.ts";
import type { Life } from "../livingWorker.ts";
import type { WorkerApi } from "../workerApi.ts";

/** As many traces as a worker keeps: the road that is driven, and those that somebody goes back and forth between. */
const MOST_KEPT = 4;

const ids = new WeakMap<Trace, number>();
let lastId = 0;

/** The id under which a worker has a trace; it is sent there once, however often it is driven. */
export async function sendTrace(
  { api, sent }: Pick<Life<WorkerApi>, "sent"> & { readonly api: Pick<WorkerApi, "keepTrace" | "dropTrace"> },
  trace: Trace,
): Promise<number> {
  const id = ids.get(trace) ?? ++lastId;
  ids.set(trace, id);
  if (sent.delete(id)) {
    sent.add(id); // the latest used are at the end
    return id;
  }
  sent.add(id);
  await api.keepTrace(id, trace);
  const [oldest] = sent;
  if (sent.size > MOST_KEPT && oldest !== undefined) {
    sent.delete(oldest);
    await api.dropTrace(oldest);
  }
  return id;
}

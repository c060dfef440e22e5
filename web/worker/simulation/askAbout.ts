import type { Trace } from "../../../sim/index.ts";
import type { Life } from "../livingWorker.ts";
import type { WorkerApi } from "../workerApi.ts";

/** As many traces as a worker keeps: the road that is driven, and those that somebody goes back and forth between. */
const MOST_KEPT = 4;

const ids = new WeakMap<Trace, number>();
let lastId = 0;

type Receiver = Pick<Life<WorkerApi>, "sent"> & { readonly api: Pick<WorkerApi, "keepTrace" | "dropTrace"> };

/**
 * Asks a worker about a trace by the id under which it has it; the trace is sent there once, however often it is driven. Where it is
 * there already the question is put at once, before whatever else the page's thread has begun.
 */
export function askAbout<Answer>(
  receiver: Receiver,
  trace: Trace,
  question: (id: number) => Promise<Answer>,
): Promise<Answer> {
  const id = ids.get(trace) ?? ++lastId;
  ids.set(trace, id);
  const { sent } = receiver;
  if (!sent.delete(id)) return send(receiver, id, trace).then(question);
  sent.add(id); // the latest used are at the end
  return question(id);
}

async function send({ api, sent }: Receiver, id: number, trace: Trace): Promise<number> {
  sent.add(id);
  await api.keepTrace(id, trace);
  const [oldest] = sent;
  if (sent.size > MOST_KEPT && oldest !== undefined) {
    sent.delete(oldest);
    await api.dropTrace(oldest);
  }
  return id;
}

import { type Remote, wrap } from "comlink";
import { inputError } from "../../shared/problems.ts";
import { partMissing } from "./fetchPart.ts";

/** What every worker answers besides its work: whether its life can be watched, see holdLife. */
export interface Watchable {
  holdLife(): Promise<boolean>;
}

/** One worker from its start to its end. What was sent to it is gone with it. */
export interface Life<Api> {
  readonly api: Remote<Api>;
  /** Ids of what was sent to this very worker and is kept there. */
  readonly sent: Set<number>;
  /** Rejects when the worker is gone. */
  readonly over: Promise<never>;
}

class WorkerGone extends Error {}

/** A worker that starts with the first question, and is started anew for the next where it died. */
export interface LivingWorker<Api> {
  /**
   * Asks. A question over which the worker died is asked once more of a new one; where that dies too, or cannot be
   * started, the answer is an InputError that says so.
   */
  ask<T>(question: (life: Life<Api>) => Promise<T>): Promise<T>;
  /** It has been started and nothing is being asked of it. */
  isFree(): boolean;
  /** Ends this worker, so that the next question is asked of a new one. */
  renew(): void;
}

/** `start` makes the worker under the name it is given; `whenFree` hears when a lock of that name is free again. */
export function livingWorker<Api extends Watchable>(
  start: (name: string) => Worker,
  name: string,
  whenFree: (lock: string) => Promise<unknown> = (lock) => navigator.locks.request(lock, () => {}),
): LivingWorker<Api> {
  let life: Life<Api> | undefined;
  let end: (() => void) | undefined;
  let lives = 0;
  let questions = 0;

  const begin = (): Life<Api> => {
    lives += 1;
    const lock = `${name}-${lives}-${Math.random().toString(36).slice(2)}`;
    const worker = start(lock);
    const api = wrap<Api>(worker);
    let begun: Life<Api> | undefined;
    const over = new Promise<never>((_, reject) => {
      const finish = (why: string) => {
        worker.terminate();
        if (life === begun) life = undefined;
        reject(new WorkerGone(why));
      };
      end = () => finish("");
      worker.addEventListener("error", (event) => {
        event.preventDefault();
        finish(event.message ?? "");
      });
      worker.addEventListener("messageerror", () => finish(""));
      const watch = async () => {
        // Remote of a generic api does not show its methods, which Watchable promises.
        const isHeld = await (api as unknown as Remote<Watchable>).holdLife();
        if (!isHeld) return;
        await whenFree(lock);
        finish("");
      };
      watch().catch(() => {}); // its life then cannot be watched; its errors still are
    });
    over.catch(() => {}); // heard by whoever waits for an answer
    begun = { api, sent: new Set(), over };
    return begun;
  };

  return {
    async ask(question) {
      questions += 1;
      try {
        for (let tries = 1; ; tries++) {
          life ??= begin();
          const { over } = life;
          try {
            return await Promise.race([question(life), over]);
          } catch (error) {
            // A part that a worker could not fetch, it never can; a new one tries again.
            if (error instanceof Error && error.message === partMissing().message) end?.();
            if (!(error instanceof WorkerGone)) throw error;
            if (tries === 2) throw gone(error.message);
          }
        }
      } finally {
        questions -= 1;
      }
    },
    isFree: () => life !== undefined && questions === 0,
    renew() {
      if (life) end?.();
    },
  };
}

function gone(why: string): Error {
  if (why !== "") globalThis.reportError?.(new Error(why));
  const because = why === "" ? "its server may have been stopped" : "by a fault of the page";
  return inputError(
    "workerGone",
    "this page",
    `the calculation stopped twice (${because}). Nothing typed is lost: try again, or reload the page`,
  );
}

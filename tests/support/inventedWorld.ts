import type { JobStore } from "../../web/store/database/jobStore.ts";
import { emptyShelves, type MemoryShelves, memoryStore } from "../../web/store/database/memoryStore.ts";
import type { FileHandle } from "../../web/store/files/linkedFile.ts";
import type { Platform, TabMessage } from "../../web/store/platform.ts";

/** One browser with its clock, its storage and its open pages, all in a test's hands. */
export interface InventedBrowser {
  readonly shelves: MemoryShelves;
  readonly downloads: { readonly name: string; readonly text: string }[];
  readonly live: Set<string>;
  now_ms(): number;
  /** Lets time pass on every page, firing what was put off, and lets promises settle. */
  pass(time_ms: number): Promise<void>;
  /** A page of this browser. */
  page(options?: PageOptions): InventedPage;
}

export interface PageOptions {
  /** Stands between the page and its store, to refuse, alter or cut. */
  readonly between?: (store: JobStore) => JobStore;
  readonly openStore?: () => Promise<JobStore>;
  readonly chooseFile?: () => Promise<FileHandle | undefined>;
  readonly canTellSessions?: boolean;
}

export interface InventedPage {
  readonly world: Platform;
  hide(): void;
  /** Whether the person is asked before the page closes. */
  asksBeforeClosing(): boolean;
  show(): void;
  /** The page is gone without a goodbye: no timer of it fires, its session ends. */
  die(): void;
  /** Frozen by the browser: it hears nothing and no timer fires until it is shown. */
  sleep(): void;
}

interface Timer {
  readonly at_ms: number;
  readonly then: () => void;
  readonly isAwake: () => boolean;
}

/** No id is given twice, by whatever browser. */
let idsGiven = 0;

export function inventedBrowser(shelves = emptyShelves()): InventedBrowser {
  let clock_ms = 1_700_000_000_000;
  const timers = new Set<Timer>();
  const listeners = new Set<{ readonly page: object; hear(message: TabMessage): void }>();
  const downloads: { name: string; text: string }[] = [];
  const live = new Set<string>();

  return {
    shelves,
    downloads,
    live,
    now_ms: () => clock_ms,
    async pass(time_ms) {
      const end_ms = clock_ms + time_ms;
      await settled();
      for (;;) {
        const due = [...timers].filter((timer) => timer.at_ms <= end_ms && timer.isAwake());
        const next = due.sort((a, b) => a.at_ms - b.at_ms)[0];
        if (!next) break;
        timers.delete(next);
        clock_ms = Math.max(clock_ms, next.at_ms);
        next.then();
        await settled();
      }
      clock_ms = end_ms;
    },
    page({ between = (store: JobStore) => store, openStore, chooseFile, canTellSessions = true } = {}) {
      let state: "awake" | "asleep" | "dead" = "awake";
      const self = {};
      const sessions: string[] = [];
      const hidden = new Set<() => void>();
      const shown = new Set<() => void>();
      const closing = new Set<() => boolean>();
      const world: Platform = {
        openStore: openStore ?? (async () => between(memoryStore(shelves))),
        now_ms: () => clock_ms,
        newId: () => `id${++idsGiven}`,
        later(wait_ms, then) {
          const timer = { at_ms: clock_ms + wait_ms, then, isAwake: () => state === "awake" };
          timers.add(timer);
          return () => timers.delete(timer);
        },
        broadcast(message) {
          for (const { page, hear } of listeners)
            if (page !== self) queueMicrotask(() => hear(structuredClone(message)));
        },
        onBroadcast(listener) {
          const entry = { page: self, hear: (message: TabMessage) => state === "awake" && listener(message) };
          listeners.add(entry);
          return () => listeners.delete(entry);
        },
        holdSession(session) {
          sessions.push(session);
          live.add(session);
        },
        liveSessions: async () => (canTellSessions ? new Set(live) : undefined),
        onHidden: (listener) => register(hidden, listener),
        onShown: (listener) => register(shown, listener),
        onClosing: (isAtRisk) => register(closing, isAtRisk),
        askToKeep: async () => true,
        room: async () => ({}),
        pageInOneFile: async () => "<!doctype html><html><body><main></main></body></html>",
        download: (name, text) => downloads.push({ name, text }),
        ...(chooseFile && { chooseFile }),
      };
      return {
        world,
        asksBeforeClosing: () => [...closing].some((isAtRisk) => isAtRisk()),
        hide: () => hidden.forEach((listener) => void listener()),
        show() {
          state = "awake";
          shown.forEach((listener) => void listener());
        },
        die() {
          state = "dead";
          for (const session of sessions) live.delete(session);
        },
        sleep() {
          state = "asleep";
        },
      };
    },
  };
}

function register<T>(set: Set<() => T>, listener: () => T): () => void {
  set.add(listener);
  return () => set.delete(listener);
}

/** Lets everything that waits for promises run until it waits for time. */
async function settled(): Promise<void> {
  for (let i = 0; i < 200; i++) await Promise.resolve();
}

/** A store whose every call goes through `decide` first, which may refuse it, lose it or let it through. */
export function guardedStore(
  store: JobStore,
  decide: (method: string, call: () => Promise<unknown>) => Promise<unknown>,
): JobStore {
  return new Proxy(store, {
    get(target, method: keyof JobStore & string) {
      const value: unknown = target[method];
      if (typeof value !== "function" || method === "close") return value;
      return (...args: unknown[]) => decide(method, () => Promise.resolve(Reflect.apply(value, target, args)));
    },
  });
}

import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import type { JobHead } from "./database/jobRecord.ts";
import type { HeadChange, JobStore } from "./database/jobStore.ts";
import type { Platform } from "./platform.ts";
import type { Place } from "./saveStatus.ts";

/** Removed jobs can be brought back for this long, and over so many openings of the page; then they are erased. */
export const REMOVED_KEPT_days = 30;
export const REMOVED_KEPT_OPENINGS = 30;
const DAY_ms = 86_400_000;

/** The list of all jobs and the place they live in, kept as the store has them. */
export interface JobShelf {
  /** Last changed first. */
  readonly list: ReadonlySignal<readonly JobHead[]>;
  readonly place: ReadonlySignal<Place>;
  /** Reads the list anew. */
  refresh(): Promise<readonly JobHead[]>;
  /** Takes in one head that is known to have changed. */
  note(head: JobHead): void;
  /** Changes a head in the store, the list and, by word to them, other pages. */
  amend(id: string, change: HeadChange): Promise<void>;
  setShelf(id: string, shelf: JobHead["shelf"]): Promise<void>;
  /** Counts this opening of the page for what was removed, and erases what was removed long ago. */
  eraseOld(): Promise<void>;
  /** Asks the browser, once, to keep the data. Some ask the person in turn, so this waits for a first edit. */
  askToKeep(): void;
}

/** The shelf over `store`; `why` says why it is not a database, and `onHead` hears of every head that changed. */
export function jobShelf(
  store: JobStore,
  world: Platform,
  why: string | undefined,
  onHead: (head: JobHead) => void,
): JobShelf {
  const list = signal<readonly JobHead[]>([]);
  const place = signal<Place>({ kind: store.kind, unreadable: 0, ...(why !== undefined && { why }) });
  let hasAsked = false;

  const shelf: JobShelf = {
    list,
    place,
    async refresh() {
      const { heads, unreadable } = await store.list();
      const room = await world.room();
      batch(() => {
        list.value = newestFirst(heads);
        place.value = { ...place.value, ...room, unreadable };
      });
      return list.value;
    },
    note(head) {
      list.value = newestFirst([head, ...list.value.filter(({ id }) => id !== head.id)]);
      onHead(head);
    },
    async amend(id, change) {
      const head = await store.amend(id, change);
      if (head) shelf.note(head);
      world.broadcast({ kind: "list" });
    },
    setShelf(id, to) {
      const isRemoved = to === "removed";
      const openingsSince = isRemoved ? 0 : undefined;
      return shelf.amend(id, { shelf: to, removedAt_ms: isRemoved ? world.now_ms() : undefined, openingsSince });
    },
    async eraseOld() {
      const now_ms = world.now_ms();
      for (const { id, shelf: on, removedAt_ms = now_ms, openingsSince = 0 } of await shelf.refresh()) {
        if (on !== "removed") continue;
        const isOld = now_ms - removedAt_ms > REMOVED_KEPT_days * DAY_ms;
        if (isOld && openingsSince >= REMOVED_KEPT_OPENINGS) await store.erase(id);
        else await store.amend(id, { openingsSince: openingsSince + 1 });
      }
      await shelf.refresh();
    },
    askToKeep() {
      if (hasAsked || store.kind === "memory") return;
      hasAsked = true;
      void world.askToKeep().then((isKept) => {
        if (isKept !== undefined) place.value = { ...place.value, isKept };
      });
    },
  };
  return shelf;
}

function newestFirst(heads: readonly JobHead[]): readonly JobHead[] {
  return [...heads].sort((a, b) => b.changedAt_ms - a.changedAt_ms);
}

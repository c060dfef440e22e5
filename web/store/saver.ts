// Past 150 lines: the order of step, journal, write and read-back is the whole point, and is seen only side by side.

import type { Draft, Drafts } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import { externaliseLists, type KnownLists, listKeys } from "./database/externalLists.ts";
import type { Commit, ExternalisedJob, JobHead } from "./database/jobRecord.ts";
import type { JobStore, JobWrite, WriteAnswer } from "./database/jobStore.ts";
import { sameDocument } from "./database/sameDocument.ts";
import { StoreRefusal, toRefusal } from "./database/storeRefusal.ts";
import { planWrite } from "./database/writePlan.ts";
import { jobLine } from "./jobLine.ts";
import type { Platform } from "./platform.ts";
import type { SaveStatus } from "./saveStatus.ts";

/** A save waits this long for the next keystroke, */
const PAUSE_BEFORE_SAVE_ms = 300;
/** but no longer than this after the first. What was typed meanwhile is in the journal. */
const LONGEST_WAIT_ms = 1000;
/** A refused save is tried again after this, or with the next edit. */
const RETRY_ms = 10_000;

/** What the saver starts from. */
export interface Opened {
  readonly head: JobHead;
  readonly job: Job;
  readonly drafts: Drafts;
  /** False for a job that no store holds yet. */
  readonly isStored: boolean;
}

export type Clash = Extract<WriteAnswer, { kind: "stale" | "removed" }>;

export interface SaverEvents {
  onStatus(status: SaveStatus): void;
  onWritten(head: JobHead): void;
  /** The job was gone from the store and has been put there again as a whole. */
  onPutBack(): void;
  /** Another page wrote or deleted the job. This saver writes no more; what it holds is in `mine()`. */
  onClash(clash: Clash): void;
}

export interface Saver {
  head(): JobHead;
  mine(): { readonly job: Job; readonly drafts: Drafts };
  saveDraft(path: string, draft: Draft): void;
  /** Takes in an edit; `settled` names the drafts it makes superfluous. */
  commit(
    job: Job,
    reason: string,
    options?: { readonly settled?: readonly string[]; readonly isMilestone?: boolean },
  ): void;
  dropDraft(path: string): void;
  /** Counts this session's edits; the present state is the one after this step. */
  step(): number;
  /** Whether everything typed is stored. */
  isClean(): boolean;
  /** Saves what is unsaved now; resolves when it is stored or refused. */
  flush(): Promise<void>;
  /** A change of the head that another hand made in the store. */
  noteHead(head: JobHead): void;
  stop(): void;
}

interface PendingEdits {
  readonly reason: string;
  readonly edits: number;
  readonly isMilestone: boolean;
}

/**
 * Saves one open job as typed. Every edit is a step: it goes into the journal at once, and a moment later into the
 * job, checked against the revision it builds on, read back and compared. One write is on its way at a time; edits
 * meanwhile go with the next.
 */
export function jobSaver(
  store: JobStore,
  session: string,
  opened: Opened,
  /** The session's count of edits, which goes on from job to job. */
  steps: { last: number },
  world: Pick<Platform, "now_ms" | "later">,
  events: SaverEvents,
): Saver {
  let { head, job, drafts, isStored } = opened;
  const known: KnownLists = new WeakMap();
  let external = externaliseLists(job, known);
  /** Lists the store holds for certain; the journal carries only the others. */
  let storedLists: ReadonlySet<string> = isStored ? listKeys(external.frame) : new Set();
  let step = steps.last;
  let savedStep = isStored ? step : step - 1;
  /** The edits of the job that no write has carried; a job that is not stored yet must be carried whole. */
  let pending: PendingEdits | undefined = isStored ? undefined : noEdits(head);
  let isStopped = false;
  let running: Promise<void> | undefined;
  let cancelTimer: (() => void) | undefined;
  let firstUnsavedAt_ms: number | undefined;

  const commitOf = (lists: ExternalisedJob["lists"]): Commit | undefined =>
    pending && { ...pending, job: { frame: external.frame, lists }, title: job.title, line: jobLine(job) };

  const freshLists = () => new Map([...external.lists].filter(([key]) => !storedLists.has(key)));

  const refuse = (error: unknown) => {
    if (isStopped) return;
    const { reason, message } = toRefusal(error);
    events.onStatus({ kind: "refused", reason, message });
    if (reason === "orphaned" && isStored) {
      // Nothing of the job is left in the store that the next page will see: the journal must hold all of it.
      isStored = false;
      storedLists = new Set();
      pending ??= noEdits(head);
      note();
    }
    schedule(RETRY_ms);
  };

  const note = () => {
    const commit = commitOf(freshLists());
    const at_ms = world.now_ms();
    const entry = { jobId: head.id, session, step, base: head.revision, at_ms, drafts, ...(commit && { commit }) };
    store.writeJournal(entry).catch(refuse);
  };

  const schedule = (wait_ms: number) => {
    cancelTimer?.();
    cancelTimer = world.later(wait_ms, () => void save());
  };

  const edited = () => {
    steps.last += 1;
    step = steps.last;
    const now_ms = world.now_ms();
    firstUnsavedAt_ms ??= now_ms;
    note();
    events.onStatus({ kind: "saving" });
    schedule(Math.max(0, Math.min(PAUSE_BEFORE_SAVE_ms, firstUnsavedAt_ms + LONGEST_WAIT_ms - now_ms)));
  };

  const take = (next: Job, nextDrafts: Drafts, reason: string, isMilestone: boolean) => {
    job = next;
    external = externaliseLists(job, known);
    drafts = nextDrafts;
    pending = { reason, edits: (pending?.edits ?? 0) + 1, isMilestone: isMilestone || pending?.isMilestone === true };
    edited();
  };

  /** One write with its read-back. False where there is no point in going on. */
  const saveOnce = async (): Promise<boolean> => {
    const carriedStep = step;
    const carried = pending;
    const commit = commitOf(external.lists);
    const fresh = freshLists();
    const now_ms = world.now_ms();
    firstUnsavedAt_ms = undefined;
    const write: JobWrite = {
      id: head.id,
      expected: head.revision,
      session,
      step: carriedStep,
      now_ms,
      drafts,
      ...(commit && { commit }),
    };
    const sent = { frame: external.frame, drafts, lists: external.lists };
    const answer = isStored ? await store.write(write) : await putBack(write);
    if (answer.kind === "vanished") {
      isStored = false;
      storedLists = new Set();
      pending ??= noEdits(head);
      events.onPutBack();
      return true;
    }
    // Our own write whose answer was lost on the way: nobody else has been here, so build on it.
    const isOurs = answer.kind === "stale" && answer.head.writer === session;
    if (answer.kind !== "written" && !isOurs) {
      isStopped = true;
      cancelTimer?.();
      events.onClash(answer);
      return false;
    }
    head = answer.head;
    if (isOurs) return true;
    await readBack(sent, new Set(fresh.keys()));
    storedLists = listKeys(sent.frame);
    savedStep = carriedStep;
    if (carried && pending) {
      const edits = pending.edits - carried.edits;
      pending = edits > 0 ? { ...pending, edits, isMilestone: pending.isMilestone && !carried.isMilestone } : undefined;
    }
    events.onWritten(head);
    return true;
  };

  /** Adds a job that the store does not hold, as it would stand after the write. */
  const putBack = async (write: JobWrite): Promise<WriteAnswer> => {
    const { answer } = planWrite(head, write);
    if (answer.kind === "written") {
      await store.add({ head: answer.head, job: external, drafts });
      await store.dropJournal(head.id, session);
      isStored = true;
    }
    return answer;
  };

  const readBack = async (
    sent: { readonly frame: unknown; readonly drafts: Drafts; readonly lists: ExternalisedJob["lists"] },
    fresh: ReadonlySet<string>,
  ) => {
    const found = await store.read(head.id, fresh);
    if (found && found.head.revision > head.revision) return; // another page wrote since; the next write will meet it
    const isSame =
      found !== undefined &&
      found.head.revision === head.revision &&
      sameDocument(found.drafts, sent.drafts) &&
      sameDocument(found.job.frame, sent.frame) &&
      [...fresh].every((key) => sameDocument(found.job.lists.get(key), sent.lists.get(key)));
    if (!isSame) throw new StoreRefusal("differs", `the job read back at revision ${head.revision} differs`);
  };

  const save = (): Promise<void> => {
    const work = async () => {
      try {
        cancelTimer?.();
        while (!isStopped && savedStep < step) {
          events.onStatus({ kind: "saving" });
          if (!(await saveOnce())) return;
        }
        if (!isStopped) events.onStatus({ kind: "saved", at_ms: world.now_ms() });
      } catch (error) {
        refuse(error);
      }
    };
    running ??= work().finally(() => {
      running = undefined;
    });
    return running;
  };

  return {
    head: () => head,
    mine: () => ({ job, drafts }),
    saveDraft(path, draft) {
      if (sameDocument(drafts[path], draft)) return;
      drafts = { ...drafts, [path]: draft };
      edited();
    },
    dropDraft(path) {
      if (!(path in drafts)) return;
      drafts = without(drafts, [path]);
      edited();
    },
    commit(next, reason, { settled = [], isMilestone = false } = {}) {
      take(next, without(drafts, settled), reason, isMilestone);
    },
    step: () => step,
    isClean: () => savedStep >= step && !running,
    async flush() {
      await running;
      if (!isStopped && savedStep < step) await save();
    },
    noteHead(next) {
      if (next.id === head.id && next.revision === head.revision) head = next;
    },
    stop() {
      isStopped = true;
      cancelTimer?.();
    },
  };
}

function noEdits(head: JobHead): PendingEdits {
  return { reason: head.version.reason, edits: 0, isMilestone: false };
}

function without(drafts: Drafts, paths: readonly string[]): Drafts {
  return Object.fromEntries(Object.entries(drafts).filter(([path]) => !paths.includes(path)));
}

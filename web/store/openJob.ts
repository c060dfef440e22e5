// The open job: which one it is, who saves it, and what happens when another tab gets at it too. Past 150 lines, since
// leaving, arriving and clashing all move the same few signals and must not be taken apart.
import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import type { Drafts } from "../../shared/job/draft.ts";
import type { Job } from "../../shared/job/job.ts";
import { inputError } from "../../shared/problems.ts";
import type { JobHead } from "./database/jobRecord.ts";
import type { JobStore } from "./database/jobStore.ts";
import { type RefusalReason, toRefusal } from "./database/storeRefusal.ts";
import { fileReminder, type Reminder } from "./files/fileReminder.ts";
import { jobLine } from "./jobLine.ts";
import type { JobShelf } from "./jobShelf.ts";
import { newHead } from "./newHead.ts";
import type { Platform } from "./platform.ts";
import { type Clash, jobSaver, type Opened, type Saver } from "./saver.ts";
import type { SaveStatus } from "./saveStatus.ts";
import { copyIdOf } from "./unsavedFate.ts";

/** The open job as it arrived here; edits made on this page since are the page's own business. */
export interface CurrentJob {
  readonly id: string;
  readonly job: Job;
  readonly drafts: Drafts;
  /** Grows each time a state arrives that the page must show in place of its own: opened, restored, taken from another tab. */
  readonly arrival: number;
  /** What the arrival is called where it is an edit made on this page, which can be taken back there. */
  readonly asEdit?: string;
}

/** Two pages changed one job. What this page holds is being saved as a copy already; the choice is which to go on with. */
export interface Conflict {
  /** `changed`: the other page wrote it. `removed`: the other page deleted it. */
  readonly kind: "changed" | "removed";
  readonly theirs: JobHead;
  readonly copyId: string;
}

export interface OpenJob {
  readonly current: ReadonlySignal<CurrentJob | undefined>;
  readonly status: ReadonlySignal<SaveStatus>;
  readonly conflict: ReadonlySignal<Conflict | undefined>;
  readonly reminder: ReadonlySignal<Reminder | undefined>;
  readonly news: ReadonlySignal<string | undefined>;
  /** The saver of the open job, or of the one named where that is the open one. */
  saver(id?: string): Saver | undefined;
  /**
   * The saver for an edit: that of the open job. Where the page still shows a job that was deleted under it, the edit
   * begins a job of its own from what was left. Nothing where no job was ever open.
   */
  saverForEdit(): Saver | undefined;
  /** Shows a job and begins to save it; the one before is left. */
  arrive(opened: Opened): Saver;
  /** Shows another state of the same job, as one edit. */
  replace(job: Job, reason: string): void;
  /** Throws InputError where leaving the open job would lose what no store would take; a file of it will do. */
  mayLeave(): Promise<void>;
  leave(): void;
  /** Whether closing the page would lose what no store would take and no file has. */
  isAtRisk(): boolean;
  /** The state as it stands is in a file on disk. */
  noteExported(): void;
  noteHead(head: JobHead): void;
  /** Looks at what another page did to the open job; `read` gets the job as stored. */
  meet(theirs: JobHead, read: () => Promise<Opened>): Promise<void>;
  endConflict(): void;
  announce(news: string | undefined): void;
  announceRefusal(error: unknown): void;
}

export interface OpenJobEvents {
  onSaved(): void;
  /** Another job is in its place, or none. */
  onLeft(): void;
}

export function openJob(
  store: JobStore,
  world: Platform,
  session: string,
  shelf: () => JobShelf,
  events: OpenJobEvents,
): OpenJob {
  const current = signal<CurrentJob | undefined>(undefined);
  const status = signal<SaveStatus>({ kind: "idle" });
  const conflict = signal<Conflict | undefined>(undefined);
  const reminder = signal<Reminder | undefined>(undefined);
  const news = signal<string | undefined>(undefined);
  // Steps go on from job to job: a job opened twice in one session must not count its second edits as saved.
  const steps = { last: 0 };
  let saver: Saver | undefined;
  let arrivals = 0;
  let exportedStep: number | undefined;
  /** Why the store last refused this job, until it takes it. */
  let refused: RefusalReason | undefined;
  let left: ReturnType<Saver["mine"]> | undefined;

  /** Starts to save `opened`, at once and without waiting for anything, so that no edit falls between two savers. */
  const follow = (opened: Opened): Saver => {
    saver?.stop();
    events.onLeft();
    const next: Saver = jobSaver(store, session, opened, steps, world, {
      onStatus: (value) => {
        if (saver !== next) return;
        status.value = value;
        // The next try does not make good what the last one was refused.
        if (value.kind === "refused") refused = value.reason;
        else if (value.kind === "saved") refused = undefined;
      },
      onWritten: (head) => {
        shelf().note(head);
        world.broadcast({ kind: "wrote", id: head.id, revision: head.revision, session });
        if (saver === next) events.onSaved();
      },
      onPutBack: () => {
        news.value =
          "The browser's data had been cleared. This job was put there again from this page; others may be lost.";
      },
      onClash: (clash) => {
        if (saver === next) settleClash(clash, next);
      },
    });
    saver = next;
    exportedStep = undefined;
    refused = undefined;
    reminder.value = fileReminder(opened.head, world.now_ms());
    return next;
  };

  /** What this page holds goes into a copy at once; the person then chooses which of the two to go on with. */
  const settleClash = (clash: Clash, old: Saver) => {
    const mine = old.mine();
    const theirs = clash.head;
    const copyId = copyIdOf(theirs.id, session, old.step());
    const head = newHead({
      id: copyId,
      title: mine.job.title,
      line: jobLine(mine.job),
      session,
      now_ms: world.now_ms(),
      reason: "kept from a tab when another tab changed the job",
      note: "kept from one of two tabs that changed the job",
    });
    batch(() => {
      const copy = follow({ head, ...mine, isStored: false });
      current.value = { id: copyId, ...mine, arrival: arrivals };
      conflict.value = { kind: clash.kind === "removed" ? "removed" : "changed", theirs, copyId };
      const settled = copy.flush().then(async () => {
        if (!copy.isClean()) return;
        await store.copyTracks(theirs.id, copyId);
        await store.dropJournal(theirs.id, session);
      });
      settled.catch(() => {}); // the copy's own status says what was refused; the entry stays until the next opening
    });
  };

  const arrive = (opened: Opened): Saver => {
    arrivals += 1;
    return batch(() => {
      const mine = follow(opened);
      conflict.value = undefined;
      current.value = { id: opened.head.id, job: opened.job, drafts: opened.drafts, arrival: arrivals };
      if (opened.isStored) status.value = { kind: "saved", at_ms: opened.head.changedAt_ms };
      return mine;
    });
  };

  const leave = () => {
    left = saver?.mine();
    saver?.stop();
    saver = undefined;
    batch(() => {
      events.onLeft();
      current.value = undefined;
      conflict.value = undefined;
      reminder.value = undefined;
      status.value = { kind: "idle" };
    });
  };

  return {
    current,
    status,
    conflict,
    reminder,
    news,
    arrive,
    leave,
    saver: (id) => (id === undefined || saver?.head().id === id ? saver : undefined),
    saverForEdit() {
      if (saver || !left) return saver;
      const mine = left;
      const head = newHead({
        id: world.newId(),
        title: mine.job.title,
        line: jobLine(mine.job),
        session,
        now_ms: world.now_ms(),
        reason: "kept from a page that went on after the job was deleted",
        note: "edits made after the job was deleted",
      });
      return batch(() => {
        current.value = { id: head.id, ...mine, arrival: arrivals };
        return follow({ head, ...mine, isStored: false });
      });
    },
    replace(job, reason) {
      if (!saver) return;
      saver.commit(job, reason, { settled: Object.keys(saver.mine().drafts), isMilestone: true });
      arrivals += 1;
      current.value = { id: saver.head().id, job, drafts: {}, arrival: arrivals, asEdit: reason };
    },
    async mayLeave() {
      const mine = saver;
      await mine?.flush();
      if (!mine || mine.isClean() || saver !== mine || exportedStep === mine.step()) return;
      const message = "found edits that could not be stored, save this job as a file before you leave it";
      throw inputError("unsaved", mine.mine().job.title, message);
    },
    isAtRisk() {
      if (!saver || exportedStep === saver.step()) return false;
      // What a cleared browser refused is set aside for the next page, and found there.
      if (refused) return refused !== "orphaned";
      return store.kind === "memory" && Object.keys(saver.mine().drafts).length > 0;
    },
    noteExported() {
      exportedStep = saver?.step();
    },
    noteHead(head) {
      if (saver?.head().id !== head.id) return;
      saver.noteHead(head);
      reminder.value = fileReminder(head, world.now_ms());
    },
    async meet(theirs, read) {
      const mine = saver;
      if (!mine || mine.head().id !== theirs.id) return;
      if (theirs.revision <= mine.head().revision && theirs.shelf !== "removed") return;
      if (!mine.isClean()) return mine.flush(); // meets the newer revision, and clashes
      if (theirs.shelf === "removed") {
        leave();
        news.value = `${theirs.title} was deleted in another tab; it can be brought back from the list of jobs.`;
        return;
      }
      const opened = await read();
      if (saver !== mine) return;
      if (!mine.isClean()) return mine.flush();
      arrive(opened);
      news.value = "Another tab changed this job; its state is shown here now.";
    },
    endConflict() {
      conflict.value = undefined;
    },
    announce(words) {
      news.value = words;
    },
    announceRefusal(error) {
      const { reason, message } = toRefusal(error);
      status.value = { kind: "refused", reason, message };
    },
  };
}

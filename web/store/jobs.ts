// The one door to the storage of jobs. Long, since it joins the parts; each part has a file of its own.
import { batch, type ReadonlySignal, signal } from "@preact/signals-core";
import type { Job } from "../../shared/job/job.ts";
import { jobText } from "../../shared/job/jobText.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { inputError } from "../../shared/problems.ts";
import { browserSurroundings } from "./browserSurroundings.ts";
import { fileReminder, type Reminder } from "./fileReminder.ts";
import { type Difference, jobDiff } from "./jobDiff.ts";
import { jobFileName } from "./jobFileName.ts";
import { jobLine } from "./jobLine.ts";
import type { Drafts, FileCopy, JobHead, StoredJob, Track, VersionHead } from "./jobRecord.ts";
import type { HeadChange, JobStore } from "./jobStore.ts";
import { liftLists, lowerLists } from "./liftedLists.ts";
import { memoryStore } from "./memoryStore.ts";
import { newHead } from "./newHead.ts";
import { type FileLike, readJobFile } from "./readJobFile.ts";
import { type Recovered, recoverWords } from "./recoverWords.ts";
import { type Clash, jobSaver, type Opened, type Saver } from "./saver.ts";
import type { Place, SaveStatus } from "./saveStatus.ts";
import { toRefusal } from "./storeRefusal.ts";
import type { Surroundings, TabMessage } from "./surroundings.ts";
import { type FileHandle, isFileHandle, type TieState, writeTiedFile } from "./tiedFile.ts";

/** Removed jobs can be brought back for this long, then they are erased when the page opens. */
export const REMOVED_KEPT_days = 30;
const DAY_ms = 86_400_000;

/** A tied file is written this long after the database was. */
const PAUSE_BEFORE_FILE_ms = 2000;

/** The open job as it arrived here; edits made on this page since are the page's own business. */
export interface CurrentJob {
  readonly id: string;
  readonly job: Job;
  readonly drafts: Drafts;
  /** Grows each time a state arrives that the page must show in place of its own: opened, restored, taken from another tab. */
  readonly arrival: number;
}

/** Two pages changed one job. What this page holds is being saved as a copy already; the choice is which to go on with. */
export interface Conflict {
  /** `changed`: the other page wrote it. `removed`: the other page deleted it. */
  readonly kind: "changed" | "removed";
  readonly theirs: JobHead;
  readonly copyId: string;
}

/** A state of a job that can be looked at and restored. */
export interface JobVersion extends VersionHead {
  readonly isPresent: boolean;
}

/** What `compare` may be given: a stored job, one of its versions, or a job in hand. */
export type Comparable = { readonly id: string; readonly version?: number } | { readonly job: Job };

export interface Jobs {
  readonly list: ReadonlySignal<readonly JobHead[]>;
  readonly current: ReadonlySignal<CurrentJob | undefined>;
  readonly status: ReadonlySignal<SaveStatus>;
  readonly place: ReadonlySignal<Place>;
  readonly conflict: ReadonlySignal<Conflict | undefined>;
  readonly reminder: ReadonlySignal<Reminder | undefined>;
  readonly tie: ReadonlySignal<TieState>;
  /** One sentence about something that happened without the person asking, such as a state taken from another tab. */
  readonly news: ReadonlySignal<string | undefined>;
  /** What earlier pages left unsaved and was brought back when this one opened. */
  readonly recovered: readonly Recovered[];
  /** Whether this browser can tie a job to a file. */
  readonly canTie: boolean;
  /** Opens a stored job and leaves the one before. Throws InputError where what is stored cannot be read. */
  open(id: string): Promise<Job>;
  /** Adds a job and opens it; `from` says how it came about ("the demo roadster"). Comes back with its id. */
  create(job: Job, from: string, file?: FileCopy): Promise<string>;
  saveDraft(path: string, text: string): void;
  dropDraft(path: string): void;
  /** Takes in an edit with its reason line; `settled` names drafts that it makes superfluous. */
  commit(job: Job, reason: string, settled?: readonly string[]): void;
  /** Takes in the open job with all its drafts as they stand; `reason` counts where the job itself changed. */
  saveSheet(job: Job, drafts: Drafts, reason: string): void;
  flush(): Promise<void>;
  versions(id: string): Promise<readonly JobVersion[]>;
  readVersion(id: string, number: number): Promise<Job>;
  /** Puts a version back as the newest state; what it replaces becomes a version itself. */
  restore(id: string, number: number): Promise<void>;
  duplicate(id: string): Promise<string>;
  archive(id: string): Promise<void>;
  unarchive(id: string): Promise<void>;
  remove(id: string): Promise<void>;
  /** Brings a removed job back: the one named, or the last that was removed on this page. */
  undoRemove(id?: string): Promise<string | undefined>;
  /** Saves a job as a file, the open one where none is named; works when the database does not. */
  exportFile(id?: string): Promise<{ readonly name: string; readonly text: string }>;
  /** Adds the job in a file and opens it. Throws InputError with all that is wrong; the open job is then untouched. */
  importFile(file: FileLike & { readonly lastModified?: number }): Promise<string>;
  /** Lets the person choose a file that the open job is saved along to. Needs a click. */
  tieToFile(): Promise<void>;
  untieFile(): Promise<void>;
  /** Asks for permission again. Needs a click. */
  allowFile(): Promise<void>;
  /** Writes over a tied file that was changed outside. */
  overwriteFile(): Promise<void>;
  compare(before: Comparable, after: Comparable): Promise<Difference[]>;
  keepMine(): void;
  takeTheirs(): Promise<void>;
  dismissNews(): void;
  putTrack(roadId: string, track: Track): Promise<void>;
  readTrack(roadId: string): Promise<Track | undefined>;
  close(): void;
}

/** Opens the jobs of this browser; falls back to memory, and says so in `place`, where there is no database. */
export async function openJobs(world: Surroundings = browserSurroundings()): Promise<Jobs> {
  const session = world.newId();
  world.holdSession(session);
  let why: string | undefined;
  const store: JobStore = await world.openStore().catch((error: unknown) => {
    why = toRefusal(error).message;
    return memoryStore();
  });

  const list = signal<readonly JobHead[]>([]);
  const current = signal<CurrentJob | undefined>(undefined);
  const status = signal<SaveStatus>({ kind: "idle" });
  const place = signal<Place>({ kind: store.kind, unreadable: 0, ...(why !== undefined && { why }) });
  const conflict = signal<Conflict | undefined>(undefined);
  const reminder = signal<Reminder | undefined>(undefined);
  const tie = signal<TieState>({ kind: "none" });
  const news = signal<string | undefined>(undefined);

  let saver: Saver | undefined;
  let handle: FileHandle | undefined;
  let cancelFile: (() => void) | undefined;
  let hasAskedToKeep = false;
  let arrivals = 0;
  const removedHere: string[] = [];

  const refreshList = async () => {
    const { heads, unreadable } = await store.list();
    const room = await world.room();
    batch(() => {
      list.value = [...heads].sort((a, b) => b.changedAt_ms - a.changedAt_ms);
      place.value = { ...place.value, ...room, unreadable };
    });
    return list.value;
  };

  const noteHead = (head: JobHead) => {
    const others = list.value.filter((each) => each.id !== head.id);
    list.value = [head, ...others].sort((a, b) => b.changedAt_ms - a.changedAt_ms);
    if (saver?.head().id !== head.id) return;
    saver.noteHead(head);
    reminder.value = fileReminder(head, world.now_ms());
  };

  const amend = async (id: string, change: HeadChange) => {
    const head = await store.amend(id, change);
    if (head) noteHead(head);
    world.tell({ kind: "list" });
  };

  /** Starts to save `opened`, at once and without waiting for anything, so that no edit falls between two savers. */
  const follow = (opened: Opened): Saver => {
    saver?.stop();
    const next: Saver = jobSaver(store, session, opened, world, {
      onStatus: (value) => {
        if (saver === next) status.value = value;
      },
      onWritten: (head) => {
        noteHead(head);
        world.tell({ kind: "wrote", id: head.id, revision: head.revision, session });
        if (saver === next && handle) scheduleFile(PAUSE_BEFORE_FILE_ms);
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
    reminder.value = fileReminder(opened.head, world.now_ms());
    return next;
  };

  /** What this page holds goes into a copy at once; the person then chooses which of the two to go on with. */
  const settleClash = (clash: Clash, old: Saver) => {
    const mine = old.mine();
    const theirs = clash.head;
    const copyId = world.newId();
    const head = newHead({
      ...{ id: copyId, title: mine.job.title, line: jobLine(mine.job), session, now_ms: world.now_ms() },
      reason: "kept from a tab when another tab changed the job",
      note: "kept from one of two tabs that changed the job",
    });
    untieHere();
    batch(() => {
      const copy = follow({ head, ...mine, isStored: false });
      current.value = { id: copyId, ...mine, arrival: arrivals };
      conflict.value = { kind: clash.kind === "removed" ? "removed" : "changed", theirs, copyId };
      void copy
        .flush()
        .then(async () => {
          if (!copy.isClean()) return;
          await store.copyTracks(theirs.id, copyId);
          await store.dropLastWords(theirs.id, session);
        })
        .catch(() => {}); // the copy's own status says what was refused; the words stay until the next opening
    });
  };

  const arrive = (opened: Opened) => {
    follow(opened);
    arrivals += 1;
    current.value = { id: opened.head.id, job: opened.job, drafts: opened.drafts, arrival: arrivals };
  };

  const leave = () => {
    saver?.stop();
    saver = undefined;
    untieHere();
    batch(() => {
      current.value = undefined;
      conflict.value = undefined;
      reminder.value = undefined;
      status.value = { kind: "idle" };
    });
  };

  const untieHere = () => {
    cancelFile?.();
    handle = undefined;
    tie.value = { kind: "none" };
  };

  const readStored = async (id: string): Promise<StoredJob> => {
    const stored = await store.read(id);
    if (!stored) throw inputError("unknownJob", id, "found no such job in this browser");
    return stored;
  };

  const jobOf = (stored: StoredJob): Job => readJob(lowerLists(stored.job), stored.head.title);

  /** Looks at what another page did to the open job. */
  const meet = async (theirs: JobHead) => {
    const mine = saver;
    if (!mine || mine.head().id !== theirs.id) return;
    const isNews = theirs.revision > mine.head().revision || theirs.shelf === "removed";
    if (!isNews) return;
    if (!mine.isClean()) return mine.flush(); // meets the newer revision, and clashes
    if (theirs.shelf === "removed") {
      leave();
      news.value = `${theirs.title} was deleted in another tab; it can be brought back from the list of jobs.`;
      return;
    }
    const stored = await readStored(theirs.id);
    if (saver !== mine) return;
    if (!mine.isClean()) return mine.flush();
    arrive({ head: stored.head, job: jobOf(stored), drafts: stored.drafts, isStored: true });
    status.value = { kind: "saved", at_ms: stored.head.changedAt_ms };
    news.value = "Another tab changed this job; its state is shown here now.";
  };

  /** After a sleep, or word from another page: the list, and whether the open job moved on without us. */
  const catchUp = async () => {
    const heads = await refreshList();
    const theirs = heads.find((head) => head.id === saver?.head().id);
    if (theirs) await meet(theirs);
  };

  const sayRefusal = (error: unknown) => {
    const { reason, message } = toRefusal(error);
    status.value = { kind: "refused", reason, message };
  };

  const writeFile = async (isForced: boolean) => {
    cancelFile?.();
    const mine = saver;
    if (!mine || !handle) return;
    const outcome = await writeTiedFile(handle, mine.head(), jobText(mine.mine().job), world.now_ms(), isForced);
    if (saver !== mine) return;
    tie.value = outcome.state;
    if (outcome.copy) await amend(mine.head().id, { file: outcome.copy });
  };

  const scheduleFile = (wait_ms: number) => {
    cancelFile?.();
    cancelFile = world.later(wait_ms, () => void writeFile(false).catch(sayRefusal));
  };

  const keepAsked = () => {
    if (hasAskedToKeep || store.kind === "memory") return;
    hasAskedToKeep = true;
    void world.askToKeep().then((isKept) => {
      if (isKept !== undefined) place.value = { ...place.value, isKept };
    });
  };

  const documentOf = async (which: Comparable): Promise<unknown> => {
    if ("job" in which) return which.job;
    if (which.version !== undefined) return readVersion(which.id, which.version);
    return saver?.head().id === which.id ? saver.mine().job : lowerLists((await readStored(which.id)).job);
  };

  const readVersion = async (id: string, number: number): Promise<Job> => {
    const present = await store.read(id);
    const lifted = present?.head.version.number === number ? present.job : await store.readVersion(id, number);
    if (!lifted) throw inputError("unknownVersion", id, `found no version ${number} of this job`);
    return readJob(lowerLists(lifted), `version ${number}`);
  };

  const create = async (job: Job, from: string, file?: FileCopy): Promise<string> => {
    await saver?.flush();
    const id = world.newId();
    const head = newHead({
      ...{ id, title: job.title, line: jobLine(job), session, now_ms: world.now_ms(), reason: `made from ${from}` },
      ...(file && { file }),
    });
    untieHere();
    conflict.value = undefined;
    arrive({ head, job, drafts: {}, isStored: false });
    await saver?.flush();
    keepAsked();
    return id;
  };

  const open = async (id: string): Promise<Job> => {
    await saver?.flush();
    const broughtBack = await recoverWords(store, session, world);
    const stored = await readStored(id);
    const job = jobOf(stored);
    if (broughtBack.length > 0) {
      news.value = "What another tab had not saved when it closed was brought back.";
      await refreshList();
    }
    untieHere();
    conflict.value = undefined;
    arrive({ head: stored.head, job, drafts: stored.drafts, isStored: true });
    status.value = { kind: "saved", at_ms: stored.head.changedAt_ms };
    const mine = saver;
    const found = await store.readHandle(id);
    if (isFileHandle(found) && saver === mine) {
      handle = found;
      const permission = await found.queryPermission?.({ mode: "readwrite" });
      const isAllowed = permission === undefined || permission === "granted";
      if (saver === mine) tie.value = { kind: isAllowed ? "tied" : "asks", name: found.name };
    }
    return job;
  };

  const setShelf = (id: string, shelf: JobHead["shelf"]) =>
    amend(id, { shelf, removedAt_ms: shelf === "removed" ? world.now_ms() : undefined });

  const remove = async (id: string) => {
    if (saver?.head().id === id) {
      await saver.flush();
      leave();
    }
    await setShelf(id, "removed");
    removedHere.push(id);
  };

  const onTold = (message: TabMessage) => {
    if (message.kind === "wrote" && message.session === session) return;
    void catchUp().catch(sayRefusal);
  };
  const endings = [
    world.onTold(onTold),
    world.onHidden(() => {
      void saver?.flush();
      if (handle) scheduleFile(0);
    }),
    world.onShown(() => void catchUp().catch(sayRefusal)),
  ];

  let recovered: readonly Recovered[] = [];
  try {
    recovered = await recoverWords(store, session, world);
    for (const head of await refreshList()) {
      const isOver = world.now_ms() - (head.removedAt_ms ?? world.now_ms()) > REMOVED_KEPT_days * DAY_ms;
      if (head.shelf === "removed" && isOver) await store.erase(head.id);
    }
    await refreshList();
  } catch (error) {
    sayRefusal(error);
  }

  return {
    ...{ list, current, status, place, conflict, reminder, tie, news, recovered, create, open, remove, readVersion },
    canTie: world.chooseFile !== undefined && store.kind === "database",
    saveDraft: (path, text) => saver?.saveDraft(path, text),
    dropDraft: (path) => saver?.dropDraft(path),
    commit(job, reason, settled = []) {
      saver?.commit(job, reason, { settled });
      keepAsked();
    },
    saveSheet(job, drafts, reason) {
      saver?.put(job, drafts, reason);
      keepAsked();
    },
    flush: async () => saver?.flush(),
    async versions(id) {
      if (saver?.head().id === id) await saver.flush();
      const present = (await readStored(id)).head.version;
      const past = await store.versions(id);
      return [{ ...present, isPresent: true }, ...past.map((version) => ({ ...version, isPresent: false }))];
    },
    async restore(id, number) {
      if (saver?.head().id !== id) await open(id);
      const mine = saver;
      await mine?.flush(); // what is typed but unsaved belongs to the state that is replaced
      const version = (await store.versions(id)).find((each) => each.number === number);
      const job = await readVersion(id, number);
      if (!mine || saver !== mine) return;
      const reason = version ? `back to version ${number}: ${version.reason}` : `back to version ${number}`;
      mine.commit(job, reason, { settled: Object.keys(mine.mine().drafts), isMilestone: true });
      arrivals += 1;
      current.value = { id, job, drafts: {}, arrival: arrivals };
      await mine.flush();
    },
    async duplicate(id) {
      if (saver?.head().id === id) await saver.flush();
      const stored = await readStored(id);
      const document = lowerLists(stored.job);
      const title = `${stored.head.title.slice(0, 190)} (copy)`;
      const copy = typeof document === "object" && document !== null ? { ...document, title } : document;
      const copyId = world.newId();
      const head = newHead({
        ...{ id: copyId, title, line: stored.head.line, session, now_ms: world.now_ms() },
        reason: `copied from ${stored.head.title}`,
      });
      await store.add({ head, job: liftLists(copy), drafts: stored.drafts });
      await store.copyTracks(id, copyId);
      noteHead(head);
      world.tell({ kind: "list" });
      return copyId;
    },
    archive: (id) => setShelf(id, "archived"),
    unarchive: (id) => setShelf(id, "open"),
    async undoRemove(id = removedHere.at(-1)) {
      if (id === undefined) return undefined;
      removedHere.splice(0, removedHere.length, ...removedHere.filter((each) => each !== id));
      await setShelf(id, "open");
      return id;
    },
    async exportFile(id = saver?.head().id) {
      if (id === undefined) throw inputError("noJob", "jobs", "found no open job to save");
      const mine = saver?.head().id === id ? saver : undefined;
      const stored = mine ? undefined : await readStored(id);
      const document = mine ? mine.mine().job : stored && lowerLists(stored.job);
      const head = mine?.head() ?? stored?.head;
      const now_ms = world.now_ms();
      const name = jobFileName(mine?.mine().job.title ?? head?.title ?? "", new Date(now_ms));
      const text = jobText(document);
      world.download(name, text);
      await mine?.flush();
      const editCount = (mine?.head() ?? head)?.editCount ?? 0;
      // A copy on disk counts even where the database refuses to remember it.
      await amend(id, { file: { name, savedAt_ms: now_ms, editCount } }).catch(() => {});
      return { name, text };
    },
    async importFile(file) {
      const job = await readJobFile(file);
      const savedAt_ms = file.lastModified ?? world.now_ms();
      return create(job, `the file ${file.name}`, { name: file.name, savedAt_ms, editCount: 0 });
    },
    async tieToFile() {
      const mine = saver;
      if (!mine || !world.chooseFile) return;
      const chosen = await world.chooseFile(jobFileName(mine.mine().job.title, new Date(world.now_ms())));
      if (!chosen || saver !== mine) return;
      await mine.flush();
      handle = chosen;
      await store.putHandle(mine.head().id, chosen);
      await writeFile(true);
    },
    async untieFile() {
      const id = saver?.head().id;
      untieHere();
      if (id !== undefined) await store.dropHandle(id);
    },
    async allowFile() {
      const permission = await handle?.requestPermission?.({ mode: "readwrite" });
      if (permission === "granted") await writeFile(false);
    },
    overwriteFile: () => writeFile(true),
    async compare(before, after) {
      return jobDiff(await documentOf(before), await documentOf(after));
    },
    keepMine() {
      conflict.value = undefined;
    },
    async takeTheirs() {
      const found = conflict.value;
      if (!found) return;
      await remove(found.copyId); // what was typed here can still be brought back from the list
      if (found.kind === "changed") await open(found.theirs.id);
    },
    dismissNews() {
      news.value = undefined;
    },
    async putTrack(roadId, track) {
      if (saver) await store.putTrack(saver.head().id, roadId, track);
    },
    readTrack: async (roadId) => (saver ? store.readTrack(saver.head().id, roadId) : undefined),
    close() {
      saver?.stop();
      for (const end of endings) end();
      store.close();
    },
  };
}

// The storage of jobs put together: store, open job, shelf and file link. Past 150 lines, since they hear of one another only here.
import { inPresentNames } from "../../shared/job/formerNames.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { inputError } from "../../shared/problems.ts";
import { browserPlatform } from "./browserPlatform.ts";
import { inlineLists } from "./database/externalLists.ts";
import type { FileCopy, JobHead, StoredJob } from "./database/jobRecord.ts";
import type { JobStore } from "./database/jobStore.ts";
import { readDrafts } from "./database/readDrafts.ts";
import { toRefusal } from "./database/storeRefusal.ts";
import { fileLink } from "./files/fileLink.ts";
import { type FileLike, readJobFile } from "./files/readJobFile.ts";
import { jobCopies } from "./jobCopies.ts";
import { jobLine } from "./jobLine.ts";
import { type JobShelf, jobShelf } from "./jobShelf.ts";
import type { Comparable, Jobs } from "./jobsDoor.ts";
import { newHead } from "./newHead.ts";
import { openJob } from "./openJob.ts";
import type { Platform } from "./platform.ts";
import { type Recovered, recoverUnsaved } from "./recoverUnsaved.ts";
import type { Opened } from "./saver.ts";

/** Edits that are in no file. */
const hasNoCopy = ({ editCount, file }: JobHead) => editCount > (file?.editCount ?? 0);

const SECOND_LOOK_ms = 1500;

/** Opens the jobs of this browser; falls back to memory, and says so in `place`, where there is no database. */
export async function openJobs(
  world: Platform = browserPlatform(),
  readFile: (file: FileLike) => Promise<Job> = readJobFile,
): Promise<Jobs> {
  const session = world.newId();
  world.holdSession(session);
  let why: string | undefined;
  const store: JobStore = await world.openStore().catch(async (error: unknown) => {
    why = toRefusal(error).message;
    const { memoryStore } = await import("./database/memoryStore.ts");
    return memoryStore();
  });

  // Shelf, open job and file link hear of one another only through these.
  const openedJob = openJob(store, world, session, () => shelf, {
    onSaved: () => link.follow(false),
    onLeft: () => link.rest(),
  });
  const shelf: JobShelf = jobShelf(store, world, why, openedJob.noteHead);
  const link = fileLink(store, world, shelf);
  const removedHere: string[] = [];

  const readStored = async (id: string): Promise<StoredJob> => {
    const stored = await store.read(id);
    if (!stored) throw inputError("unknownJob", id, "found no such job in this browser");
    return stored;
  };

  const readOpened = async (id: string): Promise<Opened> => {
    const { head, job, drafts } = await readStored(id);
    return { head, job: readJob(inlineLists(job), head.title), drafts: readDrafts(drafts), isStored: true };
  };

  const readVersion = async (id: string, number: number): Promise<Job> => {
    const present = await store.read(id);
    const found = present?.head.version.number === number ? present.job : await store.readVersion(id, number);
    if (!found) throw inputError("unknownVersion", id, `found no version ${number} of this job`);
    return readJob(inlineLists(found), `version ${number}`);
  };

  /** A job as it stands: in this page where it is open here, else as stored, readable or not. */
  const documentOf = async (which: Comparable): Promise<unknown> => {
    if ("job" in which) return which.job;
    if (which.version !== undefined) return readVersion(which.id, which.version);
    return openedJob.saver(which.id)?.mine().job ?? inPresentNames(inlineLists((await readStored(which.id)).job));
  };

  const create = async (job: Job, from: string, file?: FileCopy): Promise<string> => {
    await openedJob.mayLeave();
    const id = world.newId();
    const head = newHead({
      id,
      title: job.title,
      line: jobLine(job),
      session,
      now_ms: world.now_ms(),
      reason: `made from ${from}`,
      ...(file && { file }),
    });
    await openedJob.arrive({ head, job, drafts: {}, isStored: false }).flush();
    return id;
  };

  const open = async (id: string): Promise<Job> => {
    await openedJob.mayLeave();
    const broughtBack = await recoverUnsaved(store, session, world);
    const opened = await readOpened(id);
    await link.resume(openedJob.arrive(opened));
    if (broughtBack.length > 0) {
      openedJob.announce("What another tab had not saved when it closed was brought back.");
      await shelf.refresh();
    }
    return opened.job;
  };

  const remove = async (id: string): Promise<void> => {
    const mine = openedJob.saver(id);
    await mine?.flush();
    await shelf.setShelf(id, "removed");
    removedHere.push(id);
    if (mine && openedJob.saver(id) === mine) openedJob.leave();
  };

  /** After a sleep, or word from another page: the list, and whether the open job moved on without us. */
  const catchUp = async (): Promise<void> => {
    const heads = await shelf.refresh();
    const theirs = heads.find(({ id }) => openedJob.saver(id) !== undefined);
    if (theirs) await openedJob.meet(theirs, () => readOpened(theirs.id));
  };

  const endings = [
    world.onBroadcast((message) => {
      if (message.kind !== "wrote" || message.session !== session) void catchUp().catch(openedJob.announceRefusal);
    }),
    world.onHidden(() => {
      void openedJob.saver()?.flush();
      link.follow(true);
    }),
    world.onShown(() => void catchUp().catch(openedJob.announceRefusal)),
    world.onClosing(() => openedJob.isAtRisk() || (store.kind === "memory" && shelf.list.peek().some(hasNoCopy))),
  ];

  // A page that is just being reloaded or closed may still count as open, so its journal is asked for once more.
  const cancelSecondLook = world.later(SECOND_LOOK_ms, () => {
    const look = async () => {
      if ((await recoverUnsaved(store, session, world)).length > 0) await catchUp();
    };
    void look().catch(openedJob.announceRefusal);
  });

  let recovered: readonly Recovered[] = [];
  try {
    recovered = await recoverUnsaved(store, session, world);
    const copy = recovered.find(({ isCopy }) => isCopy);
    if (copy) {
      openedJob.announce(
        `Edits to ${copy.title} on a page that closed were brought back as a job of their own, since the job changed elsewhere.`,
      );
    }
    await shelf.eraseOld();
  } catch (error) {
    openedJob.announceRefusal(error);
  }

  return {
    recovered,
    create,
    open,
    remove,
    readVersion,
    ...jobCopies({ store, world, session, shelf, openedJob, readStored, documentOf, open }),
    list: shelf.list,
    place: shelf.place,
    fileLink: link.state,
    current: openedJob.current,
    status: openedJob.status,
    conflict: openedJob.conflict,
    reminder: openedJob.reminder,
    news: openedJob.news,
    canLinkFile: world.chooseFile !== undefined && store.kind === "database",
    saveDraft: (path, draft) => openedJob.saverForEdit()?.saveDraft(path, draft),
    dropDraft: (path) => openedJob.saverForEdit()?.dropDraft(path),
    commit(job, reason, settled = []) {
      openedJob.saverForEdit()?.commit(job, reason, { settled });
      shelf.askToKeep();
    },
    flush: async () => openedJob.saver()?.flush(),
    async versions(id) {
      await openedJob.saver(id)?.flush();
      const present = (await readStored(id)).head.version;
      const past = await store.versions(id);
      return [{ ...present, isPresent: true }, ...past.map((version) => ({ ...version, isPresent: false }))];
    },
    async restore(id, number) {
      if (!openedJob.saver(id)) await open(id);
      const mine = openedJob.saver(id);
      await mine?.flush(); // what is typed but unsaved belongs to the state that is replaced
      const version = (await store.versions(id)).find((each) => each.number === number);
      const job = await readVersion(id, number);
      if (!mine || openedJob.saver(id) !== mine) return;
      openedJob.replace(job, version ? `back to version ${number}: ${version.reason}` : `back to version ${number}`);
      await mine.flush();
    },
    archive: (id) => shelf.setShelf(id, "archived"),
    unarchive: (id) => shelf.setShelf(id, "open"),
    async undoRemove(id = removedHere.at(-1)) {
      if (id === undefined) return undefined;
      await shelf.setShelf(id, "open");
      removedHere.splice(0, removedHere.length, ...removedHere.filter((each) => each !== id));
      return id;
    },
    async importFile(file) {
      const job = await readFile(file);
      const savedAt_ms = file.lastModified ?? world.now_ms();
      const id = await create(job, `the file ${file.name}`, { name: file.name, savedAt_ms, editCount: 0 });
      shelf.askToKeep();
      return id;
    },
    async linkFile() {
      const mine = openedJob.saver();
      if (mine) await link.choose(mine);
    },
    unlinkFile: link.letGo,
    allowFile: link.allow,
    overwriteFile: link.overwrite,
    async compare(before, after) {
      const { jobDiff } = await import("./versions/jobDiff.ts"); // seldom asked for
      return jobDiff(await documentOf(before), await documentOf(after));
    },
    keepMine: openedJob.endConflict,
    async takeTheirs() {
      const found = openedJob.conflict.value;
      if (!found) return;
      await remove(found.copyId); // what was typed here can still be brought back from the list
      if (found.kind === "changed") await open(found.theirs.id);
    },
    dismissNews: () => openedJob.announce(undefined),
    async putTrack(roadId, track) {
      const mine = openedJob.saver();
      if (mine) await store.putTrack(mine.head().id, roadId, track);
    },
    async readTrack(roadId) {
      const mine = openedJob.saver();
      return mine && store.readTrack(mine.head().id, roadId);
    },
    close() {
      openedJob.saver()?.stop();
      for (const end of endings) end();
      cancelSecondLook();
      store.close();
    },
  };
}

import type { Job } from "../../shared/job/job.ts";
import { jobText } from "../../shared/job/jobText.ts";
import { inputError } from "../../shared/problems.ts";
import { externaliseLists, inlineLists } from "./database/externalLists.ts";
import type { StoredJob } from "./database/jobRecord.ts";
import type { JobStore } from "./database/jobStore.ts";
import { jobFileName } from "./files/jobFileName.ts";
import { sharedPage } from "./files/sharedPage.ts";
import type { JobShelf } from "./jobShelf.ts";
import type { Comparable, Jobs } from "./jobsDoor.ts";
import { newHead } from "./newHead.ts";
import type { OpenJob } from "./openJob.ts";
import type { Platform } from "./platform.ts";

interface Hands {
  readonly store: JobStore;
  readonly world: Platform;
  readonly session: string;
  readonly shelf: JobShelf;
  readonly openedJob: OpenJob;
  readStored(id: string): Promise<StoredJob>;
  documentOf(which: Comparable): Promise<unknown>;
  open(id: string): Promise<Job>;
}

/** A job as it stands once more: as another job, which is opened, as a file on disk, as text. */
export function jobCopies(hands: Hands): Pick<Jobs, "duplicate" | "exportFile" | "readText" | "share"> {
  const { store, world, session, shelf, openedJob, readStored, documentOf, open } = hands;
  /** Where one of its long lists is gone, the rest of a job is text all the same. */
  const textOf = async (id: string): Promise<string> =>
    jobText(await documentOf({ id }).catch(async () => (await readStored(id)).job.frame));
  return {
    async duplicate(id) {
      await openedJob.mayLeave();
      const stored = await readStored(id);
      const document = inlineLists(stored.job);
      const title = `${stored.head.title.slice(0, 190)} (copy)`;
      const copy = typeof document === "object" && document !== null ? { ...document, title } : document;
      const copyId = world.newId();
      const head = newHead({
        id: copyId,
        title,
        line: stored.head.line,
        session,
        now_ms: world.now_ms(),
        reason: `copied from ${stored.head.title}`,
      });
      await store.add({ head, job: externaliseLists(copy), drafts: stored.drafts });
      await store.copyTracks(id, copyId);
      shelf.note(head);
      world.broadcast({ kind: "list" });
      await open(copyId);
      return copyId;
    },
    readText: textOf,
    async share() {
      const job = openedJob.saver()?.mine().job;
      if (!job) throw inputError("noJob", "jobs", "found no open job to share");
      const page = sharedPage(await world.pageInOneFile(), job);
      world.download(jobFileName(job.title, new Date(world.now_ms()), "html"), page, "text/html");
    },
    async exportFile(id = openedJob.saver()?.head().id) {
      if (id === undefined) throw inputError("noJob", "jobs", "found no open job to save");
      const mine = openedJob.saver(id);
      const title = mine?.mine().job.title ?? (await readStored(id)).head.title;
      const text = await textOf(id);
      const now_ms = world.now_ms();
      const name = jobFileName(title, new Date(now_ms));
      world.download(name, text);
      if (mine && openedJob.saver(id) === mine) openedJob.noteExported();
      await mine?.flush();
      const editCount = mine?.head().editCount ?? (await readStored(id)).head.editCount;
      // A copy on disk counts even where the database refuses to remember it.
      await shelf.amend(id, { file: { name, savedAt_ms: now_ms, editCount } }).catch(() => {});
      return { name, text };
    },
  };
}

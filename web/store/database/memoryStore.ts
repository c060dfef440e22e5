import type { Drafts } from "../../../shared/job/draft.ts";
import { listKeys } from "./externalLists.ts";
import type { ExternalisedJob, JobHead, JournalEntry, StoredJob, Track, VersionHead } from "./jobRecord.ts";
import type { JobStore, JobWrite, WriteAnswer } from "./jobStore.ts";
import { StoreRefusal } from "./storeRefusal.ts";
import { surplusVersions } from "./versionPolicy.ts";
import { amendHead, journalAfterWrite, planWrite } from "./writePlan.ts";

interface Shelved {
  head: JobHead;
  frame: unknown;
  drafts: Drafts;
  readonly versions: Map<number, { readonly head: VersionHead; readonly frame: unknown }>;
  readonly lists: Map<string, Float64Array>;
  readonly tracks: Map<string, Track>;
  handle: unknown;
}

/** Jobs held in memory, to be shared by several stores as a database is shared by several pages. */
export interface MemoryShelves {
  readonly jobs: Map<string, Shelved>;
  readonly journal: Map<string, JournalEntry>;
}

/** Shelves with nothing on them. */
export function emptyShelves(): MemoryShelves {
  return { jobs: new Map(), journal: new Map() };
}

/**
 * A store that lasts as long as the page: for a browser without a database, and for tests. What goes in and comes out
 * is copied, as a database does, so that nobody changes a stored job by holding on to it.
 */
export function memoryStore(shelves: MemoryShelves = emptyShelves()): JobStore {
  const shelf = (id: string): Shelved => {
    const found = shelves.jobs.get(id);
    if (!found) throw new StoreRefusal("failed", `no job ${id} is stored`);
    return found;
  };
  const withLists = (frame: unknown, from: Shelved, keys: ReadonlySet<string> = listKeys(frame)): ExternalisedJob => ({
    frame: structuredClone(frame),
    lists: new Map(
      [...keys].flatMap((key) => {
        const list = from.lists.get(key);
        return list ? [[key, list.slice()] as const] : [];
      }),
    ),
  });
  return {
    kind: "memory",
    async list() {
      return { heads: structuredClone([...shelves.jobs.values()].map((each) => each.head)), unreadable: 0 };
    },
    async read(id, lists) {
      const found = shelves.jobs.get(id);
      if (!found) return undefined;
      const { head, drafts } = structuredClone({ head: found.head, drafts: found.drafts });
      return { head, drafts, job: withLists(found.frame, found, lists) };
    },
    async add(stored) {
      if (shelves.jobs.has(stored.head.id))
        throw new StoreRefusal("failed", `a job ${stored.head.id} is stored already`);
      shelves.jobs.set(stored.head.id, newShelf(structuredClone(stored)));
    },
    async write(write) {
      return structuredClone(writeTo(shelves, structuredClone(write)));
    },
    async amend(id, change) {
      const found = shelves.jobs.get(id);
      if (!found) return undefined;
      found.head = amendHead(found.head, structuredClone(change));
      return structuredClone(found.head);
    },
    async erase(id) {
      shelves.jobs.delete(id);
      for (const [key, entry] of shelves.journal) if (entry.jobId === id) shelves.journal.delete(key);
    },
    async versions(id) {
      const heads = [...(shelves.jobs.get(id)?.versions.values() ?? [])].map((version) => version.head);
      return structuredClone(heads.sort((a, b) => b.number - a.number));
    },
    async readVersion(id, number) {
      const found = shelves.jobs.get(id);
      const version = found?.versions.get(number);
      return found && version ? withLists(version.frame, found) : undefined;
    },
    async writeJournal(entry) {
      shelves.journal.set(journalKey(entry.jobId, entry.session), structuredClone(entry));
    },
    async journal() {
      return structuredClone([...shelves.journal.values()]);
    },
    async dropJournal(jobId, session) {
      shelves.journal.delete(journalKey(jobId, session));
    },
    async putTrack(jobId, roadId, track) {
      shelf(jobId).tracks.set(roadId, structuredClone(track));
    },
    async readTrack(jobId, roadId) {
      return structuredClone(shelves.jobs.get(jobId)?.tracks.get(roadId));
    },
    async copyTracks(fromId, toId) {
      for (const [roadId, track] of shelves.jobs.get(fromId)?.tracks ?? []) {
        shelf(toId).tracks.set(roadId, structuredClone(track));
      }
    },
    async putHandle(jobId, handle) {
      shelf(jobId).handle = handle;
    },
    async readHandle(jobId) {
      return shelves.jobs.get(jobId)?.handle;
    },
    async dropHandle(jobId) {
      shelf(jobId).handle = undefined;
    },
    close() {},
  };
}

function newShelf({ head, job, drafts }: StoredJob): Shelved {
  return {
    head,
    frame: job.frame,
    drafts,
    versions: new Map(),
    lists: new Map(job.lists),
    tracks: new Map(),
    handle: undefined,
  };
}

function journalKey(jobId: string, session: string): string {
  return `${jobId} ${session}`;
}

function writeTo(shelves: MemoryShelves, write: JobWrite): WriteAnswer {
  const found = shelves.jobs.get(write.id);
  const { answer, keepsOldBody } = planWrite(found?.head, write);
  if (answer.kind !== "written" || !found) return answer;
  if (keepsOldBody) found.versions.set(found.head.version.number, { head: found.head.version, frame: found.frame });
  found.head = answer.head;
  found.drafts = write.drafts;
  if (write.commit) {
    found.frame = write.commit.job.frame;
    for (const [key, list] of write.commit.job.lists) found.lists.set(key, list);
    for (const number of surplusVersions([...found.versions.values()].map(({ head }) => head)))
      found.versions.delete(number);
    const used = new Set(
      [found.frame, ...[...found.versions.values()].map(({ frame }) => frame)].flatMap((frame) => [...listKeys(frame)]),
    );
    for (const key of found.lists.keys()) if (!used.has(key)) found.lists.delete(key);
  }
  const key = journalKey(write.id, write.session);
  const entry = shelves.journal.get(key);
  if (entry) {
    const left = journalAfterWrite(entry, write, answer.head);
    if (left) shelves.journal.set(key, left);
    else shelves.journal.delete(key);
  }
  return answer;
}

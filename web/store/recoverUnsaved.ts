import { listKeys } from "./database/externalLists.ts";
import type { ExternalisedJob, JobHead, JournalEntry } from "./database/jobRecord.ts";
import type { JobStore } from "./database/jobStore.ts";
import { newHead } from "./newHead.ts";
import type { Platform } from "./platform.ts";
import { copyIdOf, fateOfUnsaved } from "./unsavedFate.ts";

/** Where the browser cannot tell which pages are open, entries this old are taken for those of a page that is gone. */
const SURELY_GONE_ms = 60_000;

/** What was brought back from a page that died with something unsaved. */
export interface Recovered {
  readonly id: string;
  readonly title: string;
  readonly at_ms: number;
  /** True where another page had written the job since, so that this went into a job of its own. */
  readonly isCopy: boolean;
}

/**
 * Folds the journal of pages that are gone into their jobs, or into copies where the job moved on without them. Entries
 * of pages still open are left to those pages. Each is dropped only after what it holds is stored.
 */
export async function recoverUnsaved(
  store: JobStore,
  session: string,
  world: Pick<Platform, "liveSessions" | "now_ms">,
): Promise<Recovered[]> {
  const all = await store.journal();
  if (all.length === 0) return [];
  const live = await world.liveSessions();
  const isGone = (entry: JournalEntry) =>
    entry.session !== session && (live ? !live.has(entry.session) : world.now_ms() - entry.at_ms > SURELY_GONE_ms);
  const recovered: Recovered[] = [];
  for (const entry of all.filter(isGone)) {
    const found = await bringBack(store, entry, session, world);
    if (found) recovered.push(found);
  }
  return recovered;
}

/** Another page may be bringing back the same entry: a write that came too late is decided once more. */
const TRIES = 3;

async function bringBack(
  store: JobStore,
  entry: JournalEntry,
  session: string,
  world: Pick<Platform, "now_ms">,
): Promise<Recovered | undefined> {
  const { jobId: id, step, drafts, commit, at_ms } = entry;
  for (let i = 0; i < TRIES; i++) {
    const stored = await store.read(id);
    const fate = fateOfUnsaved(entry, stored?.head);
    if (fate === "apply" && stored) {
      // Under the dead session's own name, so that the write itself takes the entry away.
      const expected = stored.head.revision;
      const write = { id, expected, session: entry.session, step, now_ms: at_ms, drafts, ...(commit && { commit }) };
      const answer = await store.write(write);
      if (answer.kind === "written") return { id, title: answer.head.title, at_ms, isCopy: false };
      continue;
    }
    let recovered: Recovered | undefined;
    if (fate === "copy") {
      const copyId = copyIdOf(id, entry.session, step);
      const copy = copyOf(copyId, entry, stored, session, world);
      if (!copy) return undefined; // a list it needs is gone: the entry stays where they are
      const isThere = async () => (await store.read(copyId, new Set())) !== undefined;
      const isAdded = await store.add(copy).then(
        () => true,
        async (error: unknown) => {
          // Another page, or an earlier try that was cut off, has added this very copy.
          if (await isThere()) return false;
          throw error;
        },
      );
      if (isAdded) {
        if (stored) await store.copyTracks(id, copyId);
        recovered = { id: copyId, title: copy.head.title, at_ms, isCopy: true };
      }
    }
    await store.dropJournal(id, entry.session);
    return recovered;
  }
  return undefined; // other pages keep writing the job: the entry stays for the next opening
}

function copyOf(
  id: string,
  entry: JournalEntry,
  stored: { readonly head: JobHead; readonly job: ExternalisedJob } | undefined,
  session: string,
  world: Pick<Platform, "now_ms">,
) {
  const base = entry.commit ?? (stored && { job: stored.job, title: stored.head.title, line: stored.head.line });
  if (!base) return undefined;
  const lists = new Map([...(stored?.job.lists ?? []), ...base.job.lists]);
  const needed = listKeys(base.job.frame);
  if (![...needed].every((key) => lists.has(key))) return undefined;
  const head = newHead({
    id,
    title: base.title,
    line: base.line,
    session,
    now_ms: world.now_ms(),
    reason: "brought back from a page that closed before it could save",
    note: "edits of a page that closed; the job itself was changed elsewhere",
  });
  const job = { frame: base.job.frame, lists: new Map([...lists].filter(([key]) => needed.has(key))) };
  return { head, job, drafts: entry.drafts };
}

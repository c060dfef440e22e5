import type { JobHead, LastWords, LiftedJob } from "./jobRecord.ts";
import type { JobStore } from "./jobStore.ts";
import { listKeys } from "./liftedLists.ts";
import { newHead } from "./newHead.ts";
import type { Surroundings } from "./surroundings.ts";
import { fateOfWords } from "./wordsFate.ts";

/** Where the browser cannot tell which pages are open, words this old are taken for those of a page that is gone. */
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
 * Folds the last words of pages that are gone into their jobs, or into copies where the job moved on without them. Words
 * of pages still open are left to those pages. Each is dropped only after what it holds is stored.
 */
export async function recoverWords(
  store: JobStore,
  session: string,
  world: Pick<Surroundings, "liveSessions" | "now_ms" | "newId">,
): Promise<Recovered[]> {
  const all = await store.lastWords();
  if (all.length === 0) return [];
  const live = await world.liveSessions();
  const isGone = (words: LastWords) =>
    words.session !== session && (live ? !live.has(words.session) : world.now_ms() - words.at_ms > SURELY_GONE_ms);
  const recovered: Recovered[] = [];
  for (const words of all.filter(isGone)) {
    const stored = await store.read(words.jobId);
    const fate = fateOfWords(words, stored?.head);
    if (fate === "apply" && stored) {
      // Under the dead session's own name, so that the write itself takes the words away.
      const { jobId: id, session: writer, step, drafts, commit, at_ms } = words;
      const expected = stored.head.revision;
      const answer = await store.write({
        ...{ id, expected, session: writer, step, now_ms: at_ms, drafts },
        ...(commit && { commit }),
      });
      if (answer.kind === "written") {
        recovered.push({ id, title: answer.head.title, at_ms, isCopy: false });
        continue;
      }
    }
    if (fate !== "drop") {
      const copy = copyOf(words, stored, session, world);
      if (!copy) continue; // a list it needs is gone: the words stay where they are
      await store.add(copy);
      recovered.push({ id: copy.head.id, title: copy.head.title, at_ms: words.at_ms, isCopy: true });
    }
    await store.dropLastWords(words.jobId, words.session);
  }
  return recovered;
}

function copyOf(
  words: LastWords,
  stored: { readonly head: JobHead; readonly job: LiftedJob } | undefined,
  session: string,
  world: Pick<Surroundings, "now_ms" | "newId">,
) {
  const base = words.commit ?? (stored && { job: stored.job, title: stored.head.title, line: stored.head.line });
  if (!base) return undefined;
  const lists = new Map([...(stored?.job.lists ?? []), ...base.job.lists]);
  const needed = listKeys(base.job.frame);
  if (![...needed].every((key) => lists.has(key))) return undefined;
  const head = newHead({
    ...{ id: world.newId(), title: base.title, line: base.line, session, now_ms: world.now_ms() },
    reason: "brought back from a page that closed before it could save",
    note: "edits of a page that closed; the job itself was changed elsewhere",
  });
  const job = { frame: base.job.frame, lists: new Map([...lists].filter(([key]) => needed.has(key))) };
  return { head, job, drafts: words.drafts };
}

import type { IDBPTransaction, StoreNames } from "idb";
import type { JobSchema } from "./database.ts";
import { listKeys } from "./externalLists.ts";
import type { ExternalisedJob } from "./jobRecord.ts";
import type { JobWrite, WriteAnswer } from "./jobStore.ts";
import { KEPT_VERSIONS, surplusVersions } from "./versionPolicy.ts";
import { journalAfterWrite, planWrite } from "./writePlan.ts";

export type Store = StoreNames<JobSchema>;
export type Transaction<Mode extends IDBTransactionMode> = IDBPTransaction<JobSchema, Store[], Mode>;

/** Everything of a job under keys `[jobId, …]`. */
export function rangeOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

/** The job of a frame that was read, with its long lists from the same transaction; `keys` limits which. */
export async function withLists(
  tx: Transaction<"readonly">,
  id: string,
  frame: unknown,
  keys: ReadonlySet<string> = listKeys(frame),
): Promise<ExternalisedJob> {
  const lists = new Map<string, Float64Array>();
  await Promise.all(
    [...keys].map(async (key) => {
      const list = await tx.objectStore("lists").get([id, key]);
      if (list) lists.set(key, list);
    }),
  );
  return { frame, lists };
}

/** Carries one write out as planned, inside its transaction. */
export async function writeIn(tx: Transaction<"readwrite">, write: JobWrite): Promise<WriteAnswer> {
  const { id, commit } = write;
  const [head, body, entry] = await Promise.all([
    tx.objectStore("heads").get(id),
    tx.objectStore("bodies").get(id),
    tx.objectStore("journal").get([id, write.session]),
  ]);
  const { answer, keepsOldBody } = planWrite(head, write);
  if (answer.kind !== "written" || !head) return answer;
  const puts: Promise<unknown>[] = [
    tx.objectStore("heads").put(answer.head),
    tx.objectStore("drafts").put({ id, drafts: write.drafts }),
  ];
  if (entry) {
    const left = journalAfterWrite(entry, write, answer.head);
    puts.push(left ? tx.objectStore("journal").put(left) : tx.objectStore("journal").delete([id, write.session]));
  }
  if (commit) {
    puts.push(tx.objectStore("bodies").put({ id, frame: commit.job.frame }));
    if (keepsOldBody && body) {
      const { version } = head;
      puts.push(
        tx.objectStore("versions").put({ jobId: id, number: version.number, head: version, frame: body.frame }),
      );
    }
    puts.push(tidyLists(tx, write, body?.frame));
  }
  await Promise.all(puts);
  return answer;
}

/** Drops versions that are too many, stores the lists not stored yet, and drops those that nothing refers to any more. */
async function tidyLists(tx: Transaction<"readwrite">, { id, commit }: JobWrite, oldFrame: unknown): Promise<void> {
  if (!commit) return;
  const lists = tx.objectStore("lists");
  const stored = new Set((await lists.getAllKeys(rangeOf(id))).map(([, key]) => key));
  const fresh = [...commit.job.lists].filter(([key]) => !stored.has(key));
  const count = await tx.objectStore("versions").count(rangeOf(id));
  const past = count > KEPT_VERSIONS ? await tx.objectStore("versions").getAll(rangeOf(id)) : [];
  const surplus = surplusVersions(past.map(({ head }) => head));
  await Promise.all([
    ...fresh.map(([key, list]) => lists.put(list, [id, key])),
    ...surplus.map((number) => tx.objectStore("versions").delete([id, number])),
  ]);
  const now = listKeys(commit.job.frame);
  const isUntouched = surplus.length === 0 && [...listKeys(oldFrame)].every((key) => now.has(key));
  if (isUntouched) return;
  const versions = await tx.objectStore("versions").getAll(rangeOf(id));
  const used = new Set([...now, ...versions.flatMap(({ frame }) => [...listKeys(frame)])]);
  await Promise.all([...stored].filter((key) => !used.has(key)).map((key) => lists.delete([id, key])));
}
